/** Several things in one sentence: `a`, `a and b`, `a, b and c`. */
export function listed(items: readonly string[], word = 'and'): string {
  const last = items.at(-1) ?? '';
  return items.length < 2 ? last : `${items.slice(0, -1).join(', ')} ${word} ${last}`;
}
