// Counts an airing down from the last wipe, on this device only: it goes on over a reload or a locked phone.
const CLOCK_KEY = `clock ${location.pathname}${location.search}`;
const MINUTE_MS = 60 * 1000;
const DAY_MS = 24 * 60 * MINUTE_MS;

function startedAt() {
  try {
    const at = Number(localStorage.getItem(CLOCK_KEY));
    return at > 0 && Date.now() - at < DAY_MS ? at : undefined;
  } catch {
    return undefined;
  }
}

function keepStart(at) {
  try {
    localStorage.setItem(CLOCK_KEY, String(at));
  } catch {
    // No room or not allowed: the clock then lasts as long as the page.
  }
}

for (const clock of document.querySelectorAll('.clock')) {
  const says = clock.querySelector('span');
  const { aired, left, over } = clock.dataset;
  let started = startedAt();
  const show = () => {
    if (started === undefined) return;
    const end = started + Number(clock.dataset.clock) * MINUTE_MS;
    const minutes = Math.ceil((end - Date.now()) / MINUTE_MS);
    const time = new Date(end).toLocaleTimeString([], { hour: '2-digit', minute: '2-digit' });
    const text =
      minutes > 0
        ? `${aired.replace('{time}', time)} ${left.replace('{n}', String(minutes))}`
        : over;
    if (says.textContent !== text) says.textContent = text;
  };
  clock.querySelector('button').addEventListener('click', () => {
    started = Date.now();
    keepStart(started);
    show();
  });
  clock.hidden = false;
  show();
  setInterval(show, MINUTE_MS / 4);
  document.addEventListener('visibilitychange', show);
}
