// What is wider than its frame says so at the edge where it goes on, and is reached by keys.
const frames = '.diagram-frame,.deep-plate,.along-scroll,.trend-scroll,.bet-charts,.paper .scroll,.paper .plate';

function look(frame) {
  const room = frame.scrollWidth - frame.clientWidth;
  const more = room < 2 ? '' : [frame.scrollLeft > 1 && 'left', frame.scrollLeft < room - 1 && 'right'].filter(Boolean).join(' ');
  if (more === (frame.dataset.more ?? '')) return;
  if (more) {
    frame.dataset.more = more;
    frame.tabIndex = 0;
  } else {
    delete frame.dataset.more;
  }
}

let asked = 0;
const heard = new WeakSet();
const all = () => {
  asked = 0;
  for (const frame of document.querySelectorAll(frames)) {
    if (!heard.has(frame)) {
      heard.add(frame);
      frame.addEventListener('scroll', () => look(frame), { passive: true });
    }

    look(frame);
  }
};
const soon = () => asked ||= requestAnimationFrame(all);
soon();
addEventListener('resize', soon);
document.fonts.ready.then(soon);
new MutationObserver(soon).observe(document.body, { childList: true, subtree: true });
