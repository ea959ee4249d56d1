import { create } from 'qrcode';

/** Clear squares round the code that readers need (ISO/IEC 18004). */
const QUIET = 4;

/**
 * A QR code of a text as an SVG drawing, one path, black on white.
 *
 * @throws when the text is too long for a QR code (about 2,300 letters).
 */
export function qrSvg(text: string): string {
  const { modules } = create(text, { errorCorrectionLevel: 'M' });
  const side = modules.size + 2 * QUIET;
  const runs: string[] = [];
  for (let row = 0; row < modules.size; row += 1) {
    for (let column = 0; column < modules.size; column += 1) {
      const from = column;
      while (column < modules.size && modules.get(row, column) === 1) column += 1;
      if (column > from)
        runs.push(`M${from + QUIET} ${row + QUIET}h${column - from}v1h${from - column}z`);
    }
  }
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${side} ${side}" shape-rendering="crispEdges">` +
    `<path fill="#fff" d="M0 0h${side}v${side}H0z"/><path d="${runs.join('')}"/></svg>`
  );
}
