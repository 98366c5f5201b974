// A page is shown before its connection stands, and drawn anew when it does: both times the strip stands where the person is, not at the front.
import { follow } from './pages.js';

const stand = () => {
  const scroll = document.getElementById('strip-scroll');
  if (!scroll || scroll.dataset.seen) return;
  follow(false);
};
stand();
new MutationObserver(stand).observe(document.body, { childList: true, subtree: true });
