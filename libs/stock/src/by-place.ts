/** Rows by their place, each place in the order given. */
export function byPlace<Row extends { readonly place: string }>(
  rows: readonly Row[],
): ReadonlyMap<string, readonly Row[]> {
  const places = new Map<string, Row[]>();
  for (const row of rows) {
    const there = places.get(row.place);
    if (there) there.push(row);
    else places.set(row.place, [row]);
  }
  return places;
}
