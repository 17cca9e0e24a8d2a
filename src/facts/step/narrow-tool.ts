const narrow =
  /\b(?:(?:engine|emissions?|powertrain)(?: codes?| data| side)?,? only|only (?:the )?(?:engine|emissions?|powertrain)|(?:pocket|generic|cheap|simple) (?:(?:code|fault|engine|obd) )*(?:reader|scanner|tester|tool)|(?:engine|emissions?)[- ]code (?:reader|scanner)|reads? (?:the )?(?:engine|emissions?) codes?$)/i;
const wide =
  /\b(?:all|every|each|other|further) (?:\w+ )?(?:control units?|units?|systems?|modules?)\b|\bwhole vehicle\b/i;

/**
 * The words for a scan tool, where they say that it reads the engine alone, or is a reader that does. "Reads all control units" says
 * the opposite, unless it is denied. English alone is read.
 */
export function narrowTool(tool: string | undefined): string | undefined {
  if (tool === undefined || !/engine|emission|powertrain|reader|scanner|pocket|generic/i.test(tool))
    return undefined;
  const isWide = wide.test(tool) && !/\b(?:not|no|none|without)\b/i.test(tool);
  return narrow.test(tool.trim()) && !isWide ? tool.trim() : undefined;
}
