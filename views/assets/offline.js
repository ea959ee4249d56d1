// Keeps this page and "Help now" of its region for the time without a signal.
if ('serviceWorker' in navigator) {
  const addresses = (selector, name) =>
    [...document.querySelectorAll(selector)].map((tag) => tag[name]);
  navigator.serviceWorker
    .register('/sw.js')
    .then(() => navigator.serviceWorker.ready)
    .then(({ active }) => {
      active.postMessage({
        pages: [location.href.replace(/#.*/, ''), ...addresses('.help-door', 'href')],
        assets: [...addresses('link[rel=stylesheet]', 'href'), ...addresses('script', 'src')],
      });
    })
    .catch(() => {
      // Not allowed here, or no room: the pages then need a signal.
    });
}
