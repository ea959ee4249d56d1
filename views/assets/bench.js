// The device remembers its region; usual benches and help are those of that place.
const region = document.querySelector('#region');
document.querySelector('[data-set-region]').hidden = true;
if (region.value === '') region.value = remembered();
region.addEventListener('change', applyRegion);
applyRegion();

function remembered() {
  try {
    return localStorage.getItem('region') ?? '';
  } catch {
    return '';
  }
}

function applyRegion() {
  for (const link of document.querySelectorAll('.usual a, .help-door')) {
    const [path, query = ''] = link.getAttribute('href').split('?');
    const rest = query.split('&').filter((pair) => pair !== '' && !pair.startsWith('in='));
    const pairs = region.value === '' ? rest : [`in=${region.value}`, ...rest];
    link.href = [path, ...(pairs.length > 0 ? [pairs.join('&')] : [])].join('?');
  }
  try {
    localStorage.setItem('region', region.value);
  } catch {
    // Not allowed: it is asked for again.
  }
}

// The recipe strip grows as parts are ticked; else the server draws it.
const SVG = 'http://www.w3.org/2000/svg';
const INK_LOOKS = 4;
const SLIVER = 2;

for (const mix of document.querySelectorAll('[data-mix]')) {
  mix.addEventListener('input', () => draw(mix));
}

function draw(mix) {
  const strip = mix.querySelector('[data-strip]');
  const parts = partsOf(mix);
  strip.hidden = parts.length === 0;
  const inks = parts.filter((part) => !part.isAdditive);
  const known = inks.reduce((sum, part) => sum + (part.much ?? 0), 0);
  const missing = inks.filter((part) => part.much === undefined).length;
  const each = Math.max(100 - known, 0) / Math.max(missing, 1);
  const widths = parts.map((part) => Math.max(part.much ?? (part.isAdditive ? 0 : each), SLIVER));
  const whole = widths.reduce((sum, width) => sum + width, 0);
  let x = 0;
  strip.querySelector('svg').replaceChildren(
    ...parts.map((part, index) => {
      const width = ((widths[index] ?? 0) / whole) * 100;
      const drawn = rect(part.look, `${x}%`, `${width}%`, '44');
      x += width;
      return drawn;
    }),
  );
  const sum = missing === 0 && inks.length > 1 ? [item('', `${strip.dataset.sum} ${known} %`)] : [];
  strip.querySelector('ul').replaceChildren(...parts.map(legend), ...sum);
}

function partsOf(mix) {
  let inks = 0;
  const ticked = [...mix.querySelectorAll('.picks .tick:checked')].map((box) => {
    const pick = box.closest('.pick');
    const much = numberIn(pick.querySelector('.number'));
    const isAdditive = box.name.endsWith('.additive');
    const name = pick.querySelector('.do span').textContent;
    if (isAdditive) return { name, much, isAdditive, look: 'additive' };
    if (pick.classList.contains('extender')) return { name, much, look: 'extender' };
    inks = Math.min(inks + 1, INK_LOOKS);
    return { name, much, look: `ink-${inks}` };
  });
  const name = mix.querySelector('[name$=".typedInk"]').value.trim();
  const much = numberIn(mix.querySelector('[name$=".typedShare"]'));
  return name === '' ? ticked : [{ name, much, look: 'unknown' }, ...ticked];
}

function numberIn(field) {
  const typed = field.value.replace('%', '').replace(',', '.').trim();
  return typed === '' || Number.isNaN(Number(typed)) ? undefined : Number(typed);
}

function rect(look, x, width, height) {
  const drawn = document.createElementNS(SVG, 'rect');
  const set = { x, y: '0', width, height, fill: `url(#look-${look})` };
  for (const [name, value] of Object.entries(set)) drawn.setAttribute(name, value);
  return drawn;
}

function legend({ name, much, look }) {
  const swatch = document.createElementNS(SVG, 'svg');
  swatch.setAttribute('width', '18');
  swatch.setAttribute('height', '18');
  swatch.setAttribute('aria-hidden', 'true');
  swatch.append(rect(look, '0', '18', '18'));
  const line = item(name, much === undefined ? '' : `${much} %`);
  line.prepend(swatch);
  return line;
}

function item(text, strong) {
  const line = document.createElement('li');
  const bold = document.createElement('b');
  bold.textContent = strong;
  line.append(`${text} `, bold);
  return line;
}
