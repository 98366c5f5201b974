// A trainee's page: puts the pieces that are sent where they belong, and asks for what is pressed. What is focused stays focused.
const lost = document.getElementById('lost');
let line, tries = 0, kept = [], next = 0;

// Large pieces are kept, the last 64 of them: when one comes again, only its number is sent.
const content = piece => {
  if (typeof piece === 'number') return kept[piece];
  if (piece.length >= 400) next = (kept[next] = piece, (next + 1) % 64);
  return piece;
};

function put(pieces) {
  const focused = document.activeElement?.id;
  for (let i = 0; i < pieces.length; i += 2) {
    const place = document.getElementById(pieces[i]);
    const html = content(pieces[i + 1]);
    if (place) place.innerHTML = html;
  }
  if (focused && document.activeElement?.id !== focused) document.getElementById(focused)?.focus({ preventScroll: true });
  document.getElementById('main').removeAttribute('aria-busy');
}

function open() {
  line = new WebSocket((location.protocol === 'https:' ? 'wss://' : 'ws://') + location.host + '/drill/line');
  line.addEventListener('open', () => {
    [tries, kept, next] = [0, [], 0];
    lost.hidden = true;
    document.body.dataset.alive = 'yes';
  });
  line.addEventListener('message', e => put(JSON.parse(e.data)));
  line.addEventListener('close', () => {
    lost.hidden = false;
    delete document.body.dataset.alive;
    // Whoever has no seat any more is asked to come in again.
    if (++tries > 3) fetch('/drill/line', { cache: 'no-store' }).then(r => r.status === 401 && location.reload()).catch(() => { });
    setTimeout(open, Math.min(4000, 250 * 2 ** Math.min(tries, 4)));
  });
}

const ask = wish => line?.readyState === WebSocket.OPEN && line.send(JSON.stringify(wish));

document.addEventListener('click', e => {
  const button = e.target.closest('button[data-do]');
  if (!button || button.getAttribute('aria-disabled') === 'true') return;
  ask({ do: button.dataset.do, what: button.dataset.what, to: button.dataset.to, sure: button.dataset.sure === 'yes' });
});

document.addEventListener('submit', e => {
  const form = e.target.closest('form[data-do]');
  if (!form) return;
  e.preventDefault();
  const said = new FormData(form);
  ask({ do: form.dataset.do, what: said.get('what') ?? form.dataset.what, to: said.get('to') ?? undefined });
  const text = form.querySelector('input[type=text]');
  if (text) text.value = '';
});

const keys = { ArrowLeft: () => document.getElementById('way-left')?.click(), ArrowRight: () => document.getElementById('way-right')?.click(), c: () => go('card-which'), n: () => go('note-text'), r: () => go('tell-text') };
const go = id => document.getElementById(id)?.focus();
document.addEventListener('keydown', e => {
  if (e.ctrlKey || e.metaKey || e.altKey || e.target.closest('input,select,textarea')) return;
  const act = keys[e.key.length === 1 ? e.key.toLowerCase() : e.key];
  if (act) {
    e.preventDefault();
    act();
  }
});

// The thing that is looked at in the list is marked on the machine.
const mark = on => e => {
  const thing = e.target.closest?.('[data-dot]');
  if (thing) document.querySelectorAll('.p-' + thing.dataset.dot).forEach(d => d.classList.toggle('on', on));
};
document.addEventListener('pointerover', mark(true));
document.addEventListener('pointerout', mark(false));
document.addEventListener('focusin', mark(true));
document.addEventListener('focusout', mark(false));

open();
