type Attributes = Readonly<Record<string, string | number>>;

const SPECIAL: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
};

const escaped = (text: string): string =>
  text.replace(/[&<>"]/g, (letter) => SPECIAL[letter] ?? letter);

/** A tenth of a pixel is finer than any pen. */
const attribute = (value: string | number): string =>
  typeof value === 'number' ? String(Math.round(value * 10) / 10 + 0) : escaped(value);

const open = (name: string, attributes: Attributes): string =>
  [name, ...Object.entries(attributes).map(([key, value]) => `${key}="${attribute(value)}"`)].join(
    ' ',
  );

/** An element that holds elements. */
export const group = (name: string, attributes: Attributes, children: readonly string[]): string =>
  `<${open(name, attributes)}>${children.join('')}</${name}>`;

/** An element that holds words. */
export const texted = (name: string, attributes: Attributes, text: string): string =>
  group(name, attributes, [escaped(text)]);

/** An element that holds nothing. */
export const shape = (name: string, attributes: Attributes): string =>
  `<${open(name, attributes)}/>`;
