// Hands in what was found, entry by entry, as soon as there is a network. An entry is handed in when the computer has said that it is on its disk; until then it is sent
// again, and sending it twice does no harm: the computer knows it by its id and its revision.
const sync = (() => {
  const least = 2, most = 60;
  const refused = new Map();
  let sent = {}, sheet = null, timer = 0, pause = least, busy = false, trouble = '', shelved = false;
  const tell = () => document.dispatchEvent(new Event('sync'));
  const open = () => findings.all.filter(e => (sent[e.id] ?? 0) < e.revision && refused.get(e.id)?.revision !== e.revision);

  async function start(given) {
    sheet = given;
    sent = await store.get('about', 'sent') ?? {};
    document.addEventListener('findings', () => open().length && soon(1.5));
    addEventListener('online', () => soon(0));
    document.addEventListener('visibilitychange', () => document.visibilityState === 'visible' && soon(0));
    soon(0);
  }

  function soon(seconds) {
    clearTimeout(timer);
    timer = setTimeout(run, seconds * 1000);
  }

  async function run() {
    if (busy) return;
    busy = true;
    try {
      for (const entry of open()) {
        trouble = await handIn(entry);
        tell();
        if (trouble) break;
      }
    } finally {
      busy = false;
    }

    pause = trouble ? Math.min(most, pause * 2) : least;
    if (open().length) soon(trouble ? pause : 0);
    tell();
  }

  /** Empty when the entry is on the computer's disk, or what it waits for: network, computer, pairing. */
  async function handIn(entry) {
    let answer;
    try {
      answer = await fetch('take', { method: 'POST', headers: { 'content-type': 'application/json' }, body: await result.of(sheet, [entry]) });
    } catch {
      return 'network';
    }

    if (answer.status === 401) return 'pairing';
    if (answer.status === 400 || answer.status === 413) {
      refused.set(entry.id, { revision: entry.revision, why: (await answer.json().catch(() => null))?.found?.[0] ?? text('tooLarge') });
      return '';
    }

    const kept = answer.ok ? await answer.json().catch(() => null) : null;
    if (!kept?.kept?.some(k => k.id === entry.id && k.revision >= entry.revision)) return 'computer';
    sent = { ...sent, [entry.id]: entry.revision };
    await store.put('about', 'sent', sent).catch(() => {}); // not noted: it is sent once more
    return '';
  }

  /** Everything that the page was made of goes onto the phone, so that the page opens without a network. */
  async function shelve() {
    try {
      await navigator.serviceWorker.register('worker.js');
      const shelf = await caches.open('walk-down');
      const parts = performance.getEntriesByType('resource').map(r => r.name).filter(n => n.startsWith(location.origin) && !n.endsWith('/take') && !n.endsWith('worker.js'));
      await shelf.addAll([...new Set([location.href.split('#')[0], ...parts])]);
      await navigator.serviceWorker.ready;
      shelved = true;
    } catch {
      shelved = false;
    }

    document.body.dataset.shelved = shelved ? 'yes' : 'no';
    tell();
  }

  const words = () => {
    const n = open().length;
    const state = trouble === 'pairing' ? text('notPaired')
      : refused.size ? text('refused', refused.size, [...refused.values()][0].why)
      : n ? text((n === 1 ? 'waits' : 'wait') + (trouble === 'computer' ? 'Computer' : 'Network'), n)
      : findings.all.length ? text('allHandedIn') : '';
    return document.body.dataset.shelved === 'no' ? `${state}${state && !state.endsWith('.') ? '.' : ''} ${text('keepOpen')}`.trim() : state;
  };

  return { start, shelve, get words() { return words(); }, get isRefused() { return refused.size > 0 || trouble === 'pairing'; } };
})();
