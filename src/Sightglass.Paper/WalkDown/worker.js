// Opens the walk-down without a network: what the computer answers is kept, and what is kept answers when the computer does not.
const patience = 4000;

self.addEventListener('install', () => self.skipWaiting());
self.addEventListener('activate', e => e.waitUntil(self.clients.claim()));
self.addEventListener('fetch', e => {
  if (e.request.method === 'GET' && new URL(e.request.url).origin === self.location.origin) e.respondWith(answer(e.request));
});

async function answer(request) {
  const shelf = await caches.open('walk-down');
  const kept = await shelf.match(request);
  const asked = fetch(request).then(async fresh => {
    if (fresh.ok && !fresh.redirected) await shelf.put(request, fresh.clone());
    return fresh;
  });
  if (!kept) return asked;
  return Promise.race([asked.catch(() => kept), new Promise(good => setTimeout(() => good(kept), patience))]);
}
