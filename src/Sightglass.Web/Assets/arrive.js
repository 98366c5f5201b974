// A page is shown before its connection stands, and drawn anew when it does: both times the strip stands where the person is, not at the front.
import { follow } from './pages.js';

const stand = () => {
  const scroll = document.getElementById('strip-scroll');
  if (!scroll || scroll.dataset.seen) return;
  follow(false);
};
stand();
new MutationObserver(stand).observe(document.body, { childList: true, subtree: true });

// While the connection is lost nobody hears what is typed or pressed: so nothing can be. What was being typed when it was lost is told when it is back.
const lost = document.getElementById('components-reconnect-modal');
let typing;
lost.addEventListener('components-reconnect-state-changed', e => {
  const held = document.querySelector('.heard');
  if (!held) return;
  if (e.detail.state !== 'hide') {
    if (!held.disabled) typing = held.contains(document.activeElement) ? document.activeElement : null;
    held.disabled = true;
    return;
  }

  held.disabled = false;
  if (!typing?.isConnected) return;
  typing.focus();
  if (!typing.matches('input,textarea,select')) return;
  for (const change of ['input', 'change']) typing.dispatchEvent(new Event(change, { bubbles: true }));
});

// On a phone the names of the pages are wider than it: the one that is open is brought into view.
let shown;
const named = () => {
  const open = document.querySelector('.head nav [aria-current]');
  const nav = open?.parentElement;
  if (!nav || (shown === open.textContent && nav.dataset.stands)) return;
  shown = open.textContent;
  nav.dataset.stands = 'yes';
  nav.scrollLeft = open.offsetLeft - nav.offsetLeft - (nav.clientWidth - open.offsetWidth) / 2;
};
named();
new MutationObserver(named).observe(document.body, { childList: true, subtree: true, attributes: true, attributeFilter: ['aria-current'] });
