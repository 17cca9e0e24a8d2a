// Loaded before a command: says on stderr how much memory the process had at most, in KiB.
process.on('exit', () => {
  process.stderr.write(`peak ${String(process.resourceUsage().maxRSS)}\n`);
});
