// Photos: made small on the phone, drawn anew so that place, time and make of the camera fall away, with marks on them.
const photo = (() => {
  const longest = 2048;

  /** A JPEG of at most 2048 px a side, the right way up. */
  async function small(file) {
    const picture = await createImageBitmap(file, { imageOrientation: 'from-image' });
    const scale = Math.min(1, longest / Math.max(picture.width, picture.height));
    const canvas = document.createElement('canvas');
    canvas.width = Math.max(1, Math.round(picture.width * scale));
    canvas.height = Math.max(1, Math.round(picture.height * scale));
    const pen = canvas.getContext('2d');
    pen.fillStyle = '#fff';
    pen.fillRect(0, 0, canvas.width, canvas.height);
    pen.drawImage(picture, 0, 0, canvas.width, canvas.height);
    picture.close();
    return new Promise((good, bad) => canvas.toBlob(b => b ? good(b) : bad(new Error('no picture')), 'image/jpeg', 0.82));
  }

  const clamp = (v, low, high) => Math.min(high, Math.max(low, v));
  const held = m => {
    const width = clamp(m.width, 0.02, 1), height = clamp(m.height, 0.02, 1);
    const round = v => Math.round(v * 1e4) / 1e4;
    return { x: round(clamp(m.x, 0, 1 - width)), y: round(clamp(m.y, 0, 1 - height)), width: round(width), height: round(height), name: m.name };
  };

  /**
   * The photo in a frame on which marks are drawn with a finger: press, draw, let go. A mark is a button: arrow keys move it, with Shift they size it,
   * Delete takes it away. Tells every new list of marks.
   */
  function framed(url, alt, marks, told) {
    const frame = el('div', { class: 'frame' }, el('img', { src: url, alt }));
    const draw = () => {
      frame.querySelectorAll('.mark-box').forEach(b => b.remove());
      marks.forEach((m, i) => frame.append(box(m, i)));
    };
    const set = (list, focus) => {
      marks = list;
      draw();
      told(marks);
      if (focus >= 0) frame.querySelectorAll('.mark-box')[focus]?.focus();
    };
    const box = (m, i) => {
      const b = el('button', { class: 'mark-box', type: 'button', 'aria-label': m.name ? text('mark', m.name) : text('markUnnamed') }, el('span', {}, m.name || text('markAsks')));
      Object.assign(b.style, { left: m.x * 100 + '%', top: m.y * 100 + '%', width: m.width * 100 + '%', height: m.height * 100 + '%' });
      b.addEventListener('click', () => named(m, i));
      b.addEventListener('keydown', e => moved(e, m, i));
      return b;
    };
    const moved = (e, m, i) => {
      const step = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[e.key];
      if (e.key === 'Delete') set(marks.filter((_, n) => n !== i), i - 1);
      if (!step) return;
      e.preventDefault();
      e.stopPropagation();
      const [x, y] = step.map(s => s * 0.02);
      set(marks.with(i, held(e.shiftKey ? { ...m, width: m.width + x, height: m.height + y } : { ...m, x: m.x + x, y: m.y + y })), i);
    };
    const named = async (m, i) => {
      const name = await ask(text('whatMarked'), m.name, text('takeMarkAway'));
      if (name === null) return;
      set(name === false ? marks.filter((_, n) => n !== i) : marks.with(i, { ...m, name }), i);
    };
    const add = m => {
      set([...marks, held(m)], marks.length);
      named(marks.at(-1), marks.length - 1);
    };
    let from = null;
    const at = e => {
      const r = frame.getBoundingClientRect();
      return { x: (e.clientX - r.left) / r.width, y: (e.clientY - r.top) / r.height };
    };
    frame.addEventListener('pointerdown', e => { from = e.target.closest('.mark-box') ? null : at(e); });
    frame.addEventListener('pointercancel', () => { from = null; });
    frame.addEventListener('pointerup', e => {
      if (!from) return;
      const to = at(e), a = from;
      from = null;
      const drawn = Math.abs(to.x - a.x) > 0.03 && Math.abs(to.y - a.y) > 0.03;
      add(drawn
        ? { x: Math.min(a.x, to.x), y: Math.min(a.y, to.y), width: Math.abs(to.x - a.x), height: Math.abs(to.y - a.y), name: '' }
        : { x: a.x - 0.1, y: a.y - 0.1, width: 0.2, height: 0.2, name: '' });
    });
    draw();
    return { frame, add: () => add({ x: 0.4, y: 0.4, width: 0.2, height: 0.2, name: '' }) };
  }

  return { small, framed };
})();
