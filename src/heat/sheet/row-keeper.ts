const rowsInBlock = 64;

/** Copies rows into blocks of many: a buffer for each of 600 rows costs more time than all their numbers. */
export function rowKeeper(length: number): (row: Float64Array) => Float64Array {
  let block = new Float64Array(0);
  let used = 0;
  return (row) => {
    if (used === block.length) {
      block = new Float64Array(length * rowsInBlock);
      used = 0;
    }
    const copy = block.subarray(used, used + length);
    copy.set(row);
    used += length;
    return copy;
  };
}
