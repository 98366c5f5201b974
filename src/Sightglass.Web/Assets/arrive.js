// A page is shown before its connection stands, and drawn anew when it does: both times the strip stands where the person is, not at the front.
import { follow } from './pages.js';

const stand = () => {
  const scroll = document.getElementById('strip-scroll');
  if (!scroll || scroll.dataset.seen) return;
  follow(false);
};
stand();
new MutationObserver(stand).observe(document.body, { childList: true, subtree: true });

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
