// What was found, entry by entry. Every change counts the entry's revision up and is written to the phone before it is called kept.
const findings = (() => {
  const entries = new Map();
  let about = null;
  let waiting = 0;
  let failed = null;
  const tell = () => document.dispatchEvent(new Event('findings'));
  const key = (place, item) => `${place}\n${item ?? ''}`;

  async function open(name, roadNumber) {
    const lasts = await store.open(name);
    for (const e of await store.all('entries')) entries.set(key(e.place, e.item), e);
    about = await store.get('about', 'about') ?? { phone: store.newId(), by: '', road_number: roadNumber, stop: 0 };
    return lasts;
  }

  /** Who walks, on which machine, where they stand. */
  async function setAbout(change) {
    about = { ...about, ...change };
    await keep('about', 'about', about);
  }

  function of(place, item) {
    return entries.get(key(place, item)) ?? null;
  }

  /** Changes an entry, or begins one: a finding without a word about its state was seen. */
  async function change(place, item, what) {
    const before = of(place, item) ?? { id: store.newId(), place, item, state: 'seen', label: '', opens_towards: '', note: '', photo: null, marks: [], voice: null, revision: 0 };
    const entry = { ...before, ...what, revision: before.revision + 1, by: about.by, at: new Date().toISOString() };
    entries.set(key(place, item), entry);
    await keep('entries', entry.id, entry);
    return entry;
  }

  /** A photo or a voice; its id goes into the entry. */
  async function addFile(blob) {
    const id = store.newId();
    return await keep('files', id, blob) ? id : null;
  }

  async function keep(kind, id, value) {
    waiting++;
    tell();
    try {
      await store.put(kind, id, value);
      failed = null;
      return true;
    } catch (why) {
      failed = why?.name === 'QuotaExceededError' ? 'full' : 'refused';
      return false;
    } finally {
      waiting--;
      tell();
    }
  }

  /** Tries again what was not kept, after room was made. */
  async function keepAll() {
    for (const e of entries.values()) await keep('entries', e.id, e);
  }

  return {
    open, of, change, addFile, setAbout, keepAll,
    get about() { return about; },
    get all() { return [...entries.values()]; },
    get state() { return { waiting, failed, lasts: store.lasts }; }
  };
})();
