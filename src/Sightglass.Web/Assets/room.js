// The instructor's room: keys, dialogs, and a pointer that leaves Space to the clock.
import { open, close, focus } from './pages.js';

export { open, close, focus };

/** Where everything stands in one column what was chosen lies far below. */
export function reveal(id) {
  if (innerWidth <= 900) document.getElementById(id)?.scrollIntoView({ block: 'start' });
}

const typing = e => e.target.closest?.('input:not([type=checkbox]),select,textarea,dialog') !== null;

export function listen(page, keys) {
  const pressed = e => {
    if (e.ctrlKey || e.metaKey || e.altKey || typing(e) || !keys.includes(e.key)) return;
    if (e.key === ' ' && e.target.closest('button,a,summary,input,[role]')) return;
    e.preventDefault();
    page.invokeMethodAsync('PressKey', e.key);
  };
  // Who points does not go on by keys from there: Space then holds everybody instead of pressing the same button again.
  const pointed = e => {
    if (e.detail > 0 && !e.target.closest('dialog')) e.target.closest('button')?.blur();
  };
  window.addEventListener('keydown', pressed);
  document.addEventListener('click', pointed);
  document.body.dataset.alive = 'yes';
  return {
    stop() {
      delete document.body.dataset.alive;
      window.removeEventListener('keydown', pressed);
      document.removeEventListener('click', pointed);
    }
  };
}
