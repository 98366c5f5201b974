// The result of a walk-down as one file: docs/schemas/walk-down.schema.json. Photos and voices stand in it.
const result = (() => {
  const dataOf = blob => new Promise((good, bad) => {
    const reader = new FileReader();
    reader.onload = () => good({ type: blob.type.split(';')[0], base64: reader.result.slice(reader.result.indexOf(',') + 1) });
    reader.onerror = () => bad(reader.error);
    reader.readAsDataURL(blob);
  });

  async function whole(entry) {
    const file = async id => {
      const blob = id ? await store.get('files', id) : null;
      return blob ? dataOf(blob) : null;
    };
    const { id, revision, place, item, state, label, opens_towards, note, marks, by, at } = entry;
    return { id, revision, place, item, state, label, opens_towards, note, marks, photo: await file(entry.photo), voice: await file(entry.voice), by, at };
  }

  const head = sheet => ({
    format: 'sightglass walk-down 1', book: sheet.book, edition: sheet.edition, road_number: findings.about.road_number || null,
    purpose: sheet.purpose, phone: findings.about.phone, by: findings.about.by, made_at: new Date().toISOString()
  });

  /** Some entries as text. */
  async function of(sheet, entries) {
    return JSON.stringify({ ...head(sheet), entries: await Promise.all(entries.map(whole)) });
  }

  /** All entries as a file, made piece by piece so that a hundred photos are never in memory twice. */
  async function file(sheet) {
    const parts = [JSON.stringify(head(sheet)).slice(0, -1), ',"entries":['];
    let first = true;
    for (const entry of findings.all) {
      parts.push(first ? '\n' : ',\n', new Blob([JSON.stringify(await whole(entry))]));
      first = false;
    }

    parts.push('\n]}\n');
    const name = ['walk-down', sheet.book, findings.about.road_number ?? '', new Date().toISOString().slice(0, 10)].join(' ').toLowerCase().replace(/[^a-z0-9]+/g, '-');
    return new File(parts, name + '.json', { type: 'application/json' });
  }

  return { of, file };
})();
