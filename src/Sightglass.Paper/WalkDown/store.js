// Where a walk-down keeps what was found: on the phone itself. What put() has answered is on the phone's storage and survives the page being killed.
const store = (() => {
  const kinds = ['entries', 'files', 'about'];
  const memory = Object.fromEntries(kinds.map(k => [k, new Map()]));
  let db = null;

  const wait = request => new Promise((good, bad) => {
    request.onsuccess = () => good(request.result);
    request.onerror = () => bad(request.error);
  });

  /** Opens the phone's storage. False where the phone gives none to this page: then all is kept only while the page is open. */
  async function open(name) {
    try {
      const request = indexedDB.open(name, 1);
      request.onupgradeneeded = () => kinds.forEach(k => request.result.createObjectStore(k));
      db = await wait(request);
      db.onversionchange = () => db.close();
      navigator.storage?.persist?.().catch(() => {});
      return true;
    } catch {
      db = null;
      return false;
    }
  }

  /** Answers when it is on the storage; throws where there is no room. */
  function put(kind, id, value) {
    if (!db) {
      memory[kind].set(id, value);
      return Promise.resolve();
    }

    return new Promise((good, bad) => {
      const work = db.transaction(kind, 'readwrite', { durability: 'strict' });
      work.oncomplete = () => good();
      work.onabort = work.onerror = () => bad(work.error ?? new Error('not kept'));
      try {
        work.objectStore(kind).put(value, id);
      } catch (why) {
        bad(why);
      }
    });
  }

  const read = (kind, ask) => wait(ask(db.transaction(kind).objectStore(kind)));
  const get = async (kind, id) => db ? read(kind, s => s.get(id)) : memory[kind].get(id);
  const all = async kind => db ? read(kind, s => s.getAll()) : [...memory[kind].values()];

  async function remove(kind, id) {
    if (!db) return void memory[kind].delete(id);
    await wait(db.transaction(kind, 'readwrite').objectStore(kind).delete(id));
  }

  /** Everything of this walk-down is taken off the phone. */
  async function clear() {
    for (const kind of kinds) {
      memory[kind].clear();
      if (db) await wait(db.transaction(kind, 'readwrite').objectStore(kind).clear());
    }
  }

  /** Bytes used and there are, or null where the phone does not say. */
  async function room() {
    try {
      const { usage, quota } = await navigator.storage.estimate();
      return { usage, quota };
    } catch {
      return null;
    }
  }

  /** A number nobody else makes, also on a page that is not allowed crypto.randomUUID. */
  function newId() {
    const b = crypto.getRandomValues(new Uint8Array(16));
    b[6] = b[6] & 15 | 64;
    b[8] = b[8] & 63 | 128;
    const h = [...b].map(x => x.toString(16).padStart(2, '0')).join('');
    return [h.slice(0, 8), h.slice(8, 12), h.slice(12, 16), h.slice(16, 20), h.slice(20)].join('-');
  }

  return { open, put, get, all, remove, clear, room, newId, get lasts() { return db !== null; } };
})();
