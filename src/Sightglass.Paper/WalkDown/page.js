// A walk-down: places in walking order, what is to be found at each, and what was found. The same script in the page that is served and in the file that stands alone.
const page = (() => {
  const main = document.getElementById('main'), kept = document.getElementById('kept');
  const states = [['seen', text('seen')], ['not_seen', text('notSeen')], ['differs', text('differs')]];
  const stand = text('stand');
  const late = {};
  let sheet = null;
  let urls = [];

  const stop = () => sheet.stops[findings.about.stop];
  const capital = t => t.charAt(0).toUpperCase() + t.slice(1);
  /** A name or text of the book as it is read here; findings name it as the book does. */
  const spoken = t => sheet.said?.[t] ?? t;
  const purpose = () => words['purpose ' + sheet.purpose] ?? spoken(sheet.purpose);
  const doneAt = s => s.items.filter(i => findings.of(s.place, i.name)).length;
  const total = () => sheet.stops.reduce((n, s) => n + s.items.length, 0);

  async function start(given) {
    sheet = given;
    sheet.stops = sheet.stops.filter(s => s.items.length || s.dangers.length || s.text);
    await findings.open(['walk-down', sheet.book, sheet.road_number ?? '', sheet.purpose].join(' '), sheet.road_number);
    document.addEventListener('findings', status);
    document.addEventListener('sync', status);
    document.addEventListener('keydown', keys);
    addEventListener('pagehide', flush);
    document.addEventListener('visibilitychange', () => document.visibilityState === 'hidden' && flush());
    document.getElementById('back').addEventListener('click', () => go(-1));
    document.getElementById('onward').addEventListener('click', () => go(1));
    document.getElementById('places').addEventListener('click', places);
    document.getElementById('hand-in').addEventListener('click', handIn);
    findings.about.stop = Math.min(findings.about.stop, sheet.stops.length - 1);
    findings.about.by ? show() : begin();
    status();
    document.body.dataset.alive = 'yes';
  }

  /** Who walks, and on which machine. */
  function begin() {
    document.getElementById('bar').hidden = true;
    const name = el('input', { type: 'text', id: 'by', autocomplete: 'name', required: true, maxlength: 80, value: findings.about.by });
    const number = sheet.road_number || !sheet.road_numbers.length ? null
      : el('select', { id: 'number' }, el('option', { value: '' }, text('notKnown')), sheet.road_numbers.map(n => el('option', { value: n }, n)));
    main.replaceChildren(
      el('h1', { tabindex: -1 }, text('walkDown')),
      el('p', { class: 'lead' }, text('lead', capital(purpose()), total(), sheet.stops.length)),
      el('form', { onsubmit: e => { e.preventDefault(); begun(name.value.trim(), number?.value); } },
        el('label', { class: 'field', for: 'by' }, el('span', {}, text('who')), name),
        number && el('label', { class: 'field', for: 'number' }, el('span', {}, text('roadNumber')), number),
        el('button', { class: 'btn key' }, text('begin'))),
      sheet.arrange.length ? el('section', {}, el('h2', {}, text('arrange')), el('ul', {}, sheet.arrange.map(a => el('li', {}, capital(spoken(a)) + '.')))) : '',
      el('p', { class: 'stand' }, stand),
      findings.state.lasts ? '' : el('p', { class: 'stand' }, text('noStorage')));
  }

  async function begun(name, number) {
    if (!name) return;
    await findings.setAbout({ by: name, ...number === undefined ? {} : { road_number: number || null } });
    show();
  }

  function show() {
    document.getElementById('bar').hidden = false;
    urls.forEach(u => URL.revokeObjectURL(u));
    urls = [];
    const s = stop(), at = findings.about.stop;
    document.getElementById('where').replaceChildren(el('b', {}, [spoken(sheet.book), findings.about.road_number].filter(Boolean).join(' ')), el('br'), text('stop', at + 1, sheet.stops.length));
    document.getElementById('back').disabled = at === 0;
    document.getElementById('onward').disabled = at === sheet.stops.length - 1;
    main.replaceChildren(
      el('h1', { tabindex: -1 }, capital(spoken(s.place))),
      el('p', { class: 'lead' }, [spoken(s.text), at > 0 && s.metres ? text('metres', s.metres) : ''].filter(Boolean).join(' ')),
      ...s.dangers.map(danger),
      el('p', { class: 'stand' }, stand),
      el('ul', { class: 'things' }, s.items.map(thing)));
    scrollTo(0, 0);
  }

  const danger = d => el('div', { class: `hz ${d.word}`, role: 'note' },
    el('h2', {}, text(d.word).toUpperCase()),
    el('p', {}, spoken(d.text)),
    d.protection ? el('p', {}, el('b', {}, text(d.on_touch ? 'beforeTouch' : 'beforeGo') + ' '), spoken(d.protection) + '.') : '');

  function thing(item) {
    const s = stop(), mine = () => findings.of(s.place, item.name);
    const id = 'i' + s.items.indexOf(item);
    const buttons = states.map(([state, words]) => el('button', {
      type: 'button', 'aria-pressed': String(mine()?.state === state),
      onclick: async () => {
        buttons.forEach((b, i) => b.setAttribute('aria-pressed', String(states[i][0] === state)));
        await findings.change(s.place, item.name, { state });
        if (state === 'differs') more.open = true;
      }
    }, words));
    const said = el('span', { class: 'small' });
    const summary = () => {
      const e = mine();
      said.textContent = e ? [e.label && `‘${e.label}’`, e.opens_towards && text('hasWay'), e.photo && text('hasPhoto'), e.note && text('hasNote'), e.voice && text('hasVoice')].filter(Boolean).join(', ') : '';
    };
    const more = el('details', { ontoggle: () => more.open && !body.hasChildNodes() && fill(body, s, item, id, summary) },
      el('summary', {}, text('more'), said));
    const body = el('div');
    more.append(body);
    summary();
    return el('li', { id }, el('h2', { id: id + 'n' }, capital(spoken(item.name))), el('p', {}, spoken(item.normal || item.purpose)),
      el('div', { class: 'seg', role: 'group', 'aria-labelledby': id + 'n' }, buttons), more);
  }

  /** What more can be said of an item. */
  function fill(body, s, item, id, summary) {
    const say = what => findings.change(s.place, item.name, what).then(e => { summary(); return e; });
    const field = (name, words, hint, tag = 'input') => {
      const input = el(tag, { id: id + name, type: tag === 'input' ? 'text' : null, maxlength: tag === 'input' ? 200 : 2000, placeholder: hint });
      input.value = findings.of(s.place, item.name)?.[name] ?? '';
      const write = () => {
        clearTimeout(late[id + name]?.timer);
        delete late[id + name];
        if (input.value !== (findings.of(s.place, item.name)?.[name] ?? '')) return say({ [name]: input.value });
      };
      input.addEventListener('input', () => {
        clearTimeout(late[id + name]?.timer);
        late[id + name] = { write, timer: setTimeout(write, 400) };
      });
      input.addEventListener('change', write);
      return el('label', { class: 'field', for: id + name }, el('span', {}, words), input);
    };
    const shots = el('div'), voices = el('div');
    body.append(
      field('label', text('label'), item.label || item.name),
      item.opens ? field('opens_towards', text('way'), text('wayHint')) : '',
      shots,
      field('note', text('note'), '', 'textarea'),
      voices);
    photos(shots, s, item, say);
    voice(voices, s, item, say);
  }

  async function photos(place, s, item, say) {
    const e = findings.of(s.place, item.name);
    const blob = e?.photo ? await store.get('files', e.photo) : null;
    const take = el('input', { type: 'file', accept: 'image/*', capture: 'environment', 'aria-label': text('photoOf', spoken(item.name)) });
    const said = el('p', { class: 'small', role: 'status' });
    take.addEventListener('change', async () => {
      if (!take.files[0]) return;
      said.textContent = text('small');
      try {
        const file = await findings.addFile(await photo.small(take.files[0]));
        if (file === null) return void (said.textContent = text('noRoom'));
        const old = findings.of(s.place, item.name)?.photo;
        await say({ photo: file, marks: [] });
        if (old) await store.remove('files', old);
        photos(place, s, item, say);
      } catch {
        said.textContent = text('noPicture');
      }
    });
    let frame = null;
    if (blob) {
      const url = URL.createObjectURL(blob);
      urls.push(url);
      frame = photo.framed(url, text('asFound', capital(spoken(item.name))), e.marks, marks => say({ marks }));
    }

    place.replaceChildren(
      frame ? el('figure', {}, frame.frame, el('figcaption', { class: 'small' }, text('drawRound'))) : '',
      el('div', { class: 'row' },
        el('span', { class: 'file btn' }, text(blob ? 'takeAgain' : 'take'), take),
        frame ? el('button', { class: 'btn', type: 'button', onclick: frame.add }, text('addMark')) : ''),
      said);
  }

  async function voice(place, s, item, say) {
    const e = findings.of(s.place, item.name);
    const blob = e?.voice ? await store.get('files', e.voice) : null;
    const button = voiceButton(async said => {
      const file = await findings.addFile(said);
      const old = findings.of(s.place, item.name)?.voice;
      if (file) await say({ voice: file });
      if (file && old) await store.remove('files', old);
      voice(place, s, item, say);
    });
    let audio = null;
    if (blob) {
      const url = URL.createObjectURL(blob);
      urls.push(url);
      audio = el('audio', { controls: true, src: url });
    }

    place.replaceChildren(...[audio, button && el('div', { class: 'row' }, button)].filter(Boolean));
  }

  async function go(step) {
    await flush();
    await goTo(findings.about.stop + step);
  }

  async function goTo(at) {
    if (at < 0 || at >= sheet.stops.length) return;
    const kept = findings.setAbout({ stop: at });
    show();
    main.querySelector('h1').focus();
    await kept;
  }

  function keys(e) {
    if (e.ctrlKey || e.metaKey || e.altKey || !findings.about.by || e.target.closest('input,select,textarea,dialog,.mark-box')) return;
    if (e.key === sheet.onward_key) go(1);
    else if (e.key === 'ArrowLeft' || e.key === 'ArrowRight') go(-1);
  }

  function places() {
    const list = el('dialog', { 'aria-labelledby': 'places-title' },
      el('h2', { id: 'places-title' }, text('places')),
      el('ol', { class: 'places' }, sheet.stops.map((s, i) => el('li', {}, el('button', {
        type: 'button', 'aria-current': i === findings.about.stop ? 'true' : null,
        onclick: () => { list.close(); goTo(i); }
      }, capital(spoken(s.place)), el('span', { class: 'num' }, text('of', doneAt(s), s.items.length)))))),
      el('form', { method: 'dialog' }, el('div', { class: 'row' }, el('button', { class: 'btn' }, text('close')))));
    modal(list);
  }

  /** The result file: saved, or given to another program of the phone. */
  async function handIn() {
    await flush();
    const all = findings.all, differs = all.filter(e => e.state === 'differs').length, missing = all.filter(e => e.state === 'not_seen').length;
    const said = el('p', { role: 'status' });
    const make = async share => {
      try {
        const file = await result.file(sheet);
        said.textContent = `${file.name}, ${Math.max(1, Math.round(file.size / 1024))} KB.`;
        if (share) return void await navigator.share({ files: [file], title: file.name });
        const url = URL.createObjectURL(file);
        el('a', { href: url, download: file.name }).click();
        setTimeout(() => URL.revokeObjectURL(url), 60_000);
      } catch (why) {
        if (why?.name !== 'AbortError') said.textContent = text('noFile');
      }
    };
    const canShare = navigator.canShare?.({ files: [new File(['{}'], 'a.json', { type: 'application/json' })] });
    modal(el('dialog', { 'aria-labelledby': 'hand-title' },
      el('h2', { id: 'hand-title' }, text('handIn')),
      el('p', {}, text('counts', all.length, total(), differs, missing, all.filter(e => e.photo).length)),
      el('p', {}, text('bring')),
      said,
      el('form', { method: 'dialog' }, el('div', { class: 'row' },
        el('button', { class: 'btn key', type: 'button', onclick: () => make(false) }, text('save')),
        canShare ? el('button', { class: 'btn', type: 'button', onclick: () => make(true) }, text('give')) : '',
        el('button', { class: 'btn' }, text('close'))))));
  }

  function modal(dialog) {
    dialog.addEventListener('close', () => dialog.remove());
    document.body.append(dialog);
    dialog.showModal();
  }

  /** What is kept, in words. */
  function status() {
    const { waiting, failed, lasts } = findings.state;
    const n = findings.all.length;
    const state = failed === 'full' ? text('full')
      : failed ? text('refusedHere')
      : waiting ? text('keeping')
      : !lasts ? text('keptOpen', n, total())
      : text('keptAll', n, total());
    const more = typeof sync === 'undefined' ? '' : sync.words;
    kept.classList.toggle('bad', Boolean(failed) || (typeof sync !== 'undefined' && sync.isRefused));
    if (kept.textContent !== state + more) kept.replaceChildren(el('span', {}, state), more ? el('span', {}, more) : '');
  }

  /** What was typed last and not yet written. */
  async function flush() {
    for (const l of Object.values(late)) await l.write();
  }

  return { start, get sheet() { return sheet; } };
})();
