// What pages need besides their markup: small changes to drawings, clicks and keys on drawings, scrolling, dialogs.

/** Changes as a flat list: id, attribute (or #text, #html), value. */
export function apply(changes) {
  for (let i = 0; i < changes.length; i += 3) {
    const element = document.getElementById(changes[i]);
    if (!element) continue;
    const what = changes[i + 1], value = changes[i + 2];
    if (what === '#text') element.textContent = value;
    else if (what === '#html') element.innerHTML = value;
    else element.setAttribute(what, value);
  }
}

/** The page's name in the head; the server writes the first one. */
export function name(title) {
  document.title = title;
}

/** A page without a drawing says that it hears. */
export function alive() {
  document.body.dataset.alive = 'yes';
}

/** What stands in a field, to be read piece by piece however long it is. */
export function textOf(id) {
  return new Blob([document.getElementById(id).value]);
}

const typing = e => e.target.closest?.('input,select,textarea,dialog') !== null;

/** Tells the page which thing of a drawing was touched or operated, and which keys were pressed. */
export function listen(page, drawing, keys) {
  const touch = e => {
    const thing = e.target.closest('[role=button],[role=switch]');
    const name = thing?.dataset.item, place = thing?.dataset.place;
    if (name || place) page.invokeMethodAsync(name ? 'TouchItem' : 'TouchPlace', name ?? place);
    return Boolean(name || place);
  };
  // On the whole page, so that a new drawing in the old one's place is heard from its first moment.
  const within = e => e.target.closest?.('#' + drawing) != null;
  const clicked = e => within(e) && touch(e);
  const entered = e => {
    if ((e.key === 'Enter' || e.key === ' ') && within(e) && e.target.closest('[role=button],[role=switch]')?.closest('svg') && touch(e)) {
      e.preventDefault();
      e.stopPropagation();
    }
  };
  const pressed = e => {
    if (e.ctrlKey || e.metaKey || e.altKey || typing(e) || !keys.includes(e.key)) return;
    if (e.key === ' ' && e.target.closest('button,a,summary,[role]')) return;
    e.preventDefault();
    page.invokeMethodAsync('PressKey', e.key);
  };
  document.addEventListener('click', clicked);
  document.addEventListener('keydown', entered);
  window.addEventListener('keydown', pressed);
  document.body.dataset.alive = 'yes';
  return {
    stop() {
      delete document.body.dataset.alive;
      document.removeEventListener('click', clicked);
      document.removeEventListener('keydown', entered);
      window.removeEventListener('keydown', pressed);
    }
  };
}

/** Brings where the person stands into view, and keeps the window on the small picture where it belongs. */
export function follow(smooth) {
  const scroll = document.getElementById('strip-scroll'), here = scroll?.querySelector('.you,.stop.now');
  if (!scroll || !here) return;
  const box = here.getBoundingClientRect(), room = scroll.getBoundingClientRect();
  const still = matchMedia('(prefers-reduced-motion: reduce)').matches;
  scroll.scrollTo({ left: scroll.scrollLeft + box.left + box.width / 2 - room.left - room.width * (room.width < 720 ? 0.5 : 0.58), behavior: smooth && !still ? 'smooth' : 'instant' });
  if (!scroll.dataset.seen) {
    scroll.dataset.seen = 'yes';
    let wide = scroll.scrollWidth;
    scroll.addEventListener('scroll', frame, { passive: true });
    // The strip grows and shrinks with the window: where the person stands stays in view.
    window.addEventListener('resize', () => {
      if (scroll.scrollWidth === wide) return frame();
      wide = scroll.scrollWidth;
      follow(false);
    });
  }
  frame();
}

function frame() {
  const scroll = document.getElementById('strip-scroll'), small = document.getElementById('strip-window');
  if (!scroll || !small) return;
  small.style.left = 100 * scroll.scrollLeft / scroll.scrollWidth + '%';
  small.style.width = Math.min(100, 100 * scroll.clientWidth / scroll.scrollWidth) + '%';
}

export function open(id) {
  const dialog = document.getElementById(id);
  if (dialog && !dialog.open) dialog.showModal();
}

export function close(id) {
  document.getElementById(id)?.close();
}

export function focus(id) {
  document.getElementById(id)?.focus();
}
