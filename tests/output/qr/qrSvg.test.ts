import jsqr from 'jsqr';
import { expect, it } from 'vitest';
import { qrSvg } from '../../../server/output/qr/qrSvg.js';

type ReadQr = (data: Uint8ClampedArray, width: number, height: number) => { data: string } | null;
/** Its types describe a module that Node does not see. */
const readQr = jsqr as unknown as ReadQr;

const DOT = 4;

/** The drawing as pixels: white paper, and each run of the path in black. */
function pixels(svg: string): { data: Uint8ClampedArray; side: number } {
  const side = Number(/viewBox="0 0 (\d+)/.exec(svg)?.[1]) * DOT;
  const data = new Uint8ClampedArray(side * side * 4).fill(255);
  const code = svg.slice(svg.lastIndexOf('<path'));
  for (const [, x, y, long] of code.matchAll(/M(\d+) (\d+)h(\d+)v1h-\3z/g)) {
    for (let row = Number(y) * DOT; row < (Number(y) + 1) * DOT; row += 1) {
      const from = (row * side + Number(x) * DOT) * 4;
      const to = from + Number(long) * DOT * 4;
      for (let at = from; at < to; at += 4) data.fill(0, at, at + 3);
    }
  }
  return { data, side };
}

it('draws a code that reads back as the same address', () => {
  const address =
    'http://192.168.1.20:3000/sheet?in=uk&mix=tram+green@transparent-base:70,water-washable-oil:30/cobalt-drier:2&on=glass-slab,lino-block&people=12&under16=yes';
  const { data, side } = pixels(qrSvg(address));
  expect(readQr(data, side, side)?.data).toBe(address);
});

it('refuses what does not fit a code', () => {
  expect(() => qrSvg('x'.repeat(4000))).toThrow();
});
