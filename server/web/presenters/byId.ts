/** The row of that id, if there is one. */
export function byId<T extends { readonly id: string }>(
  rows: readonly T[],
  id: string,
): T | undefined {
  return rows.find((row) => row.id === id);
}
