// Ticks survive a reload, on this device only, until half a day after the last one:
// tomorrow's wash-up starts with empty boxes.
const KEY = `ticks ${location.pathname}${location.search}`;
const HALF_A_DAY_MS = 12 * 60 * 60 * 1000;
const boxes = [...document.querySelectorAll('.tick')];

function ticked() {
  try {
    const { at, ids } = JSON.parse(localStorage.getItem(KEY) ?? '{}');
    return Date.now() - at < HALF_A_DAY_MS ? ids : [];
  } catch {
    return [];
  }
}

function keep() {
  const ids = boxes.filter((box) => box.checked).map((box) => box.id);
  try {
    if (ids.length > 0) localStorage.setItem(KEY, JSON.stringify({ at: Date.now(), ids }));
    else localStorage.removeItem(KEY);
  } catch {
    // No room or not allowed: the ticks then last as long as the page.
  }
}

const before = new Set(ticked());
for (const box of boxes) {
  box.checked = before.has(box.id);
  box.addEventListener('change', keep);
}
