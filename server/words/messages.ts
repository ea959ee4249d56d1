/** Interface words by key, with {placeholders} filled from `values`. */
export type Messages = (key: string, values?: Readonly<Record<string, string | number>>) => string;

/**
 * Looks up interface words. A key that has none is a fault of the program and
 * thrown, so that no page shows a gap.
 */
export function makeMessages(texts: Readonly<Record<string, string>>): Messages {
  const byKey = new Map(Object.entries(texts));
  return (key, values = {}) => {
    const text = byKey.get(key);
    if (text === undefined) throw new Error(`no words for "${key}" in messages/en.json`);
    if (!text.includes('{')) return text;
    return text.replace(/\{(\w+)\}/g, (whole, name: string) => String(values[name] ?? whole));
  };
}
