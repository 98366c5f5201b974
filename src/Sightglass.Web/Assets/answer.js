// A phone in the room: asks what is asked, says what its holder thinks. Which phone it is is known to itself alone.
const phone = localStorage.getItem('phone') ?? crypto.randomUUID?.() ?? '00000000-0000-4000-8000-' + Array.from(crypto.getRandomValues(new Uint8Array(6)), b => b.toString(16).padStart(2, '0')).join('');
localStorage.setItem('phone', phone);
const asks = document.getElementById('asks'), answers = document.getElementById('answers'), told = document.getElementById('told');
let shown = '';

// What is said stands in the page, in its language.
const words = JSON.parse(document.getElementById('words').textContent);
const text = (what, ...gaps) => words[what].replace(/\{(\d)\}/g, (_, n) => gaps[n] ?? '').trim();
const letter = i => String.fromCharCode(65 + i);

function show(now) {
  const what = JSON.stringify(now);
  if (what === shown) return;
  shown = what;
  asks.textContent = now.asks || text('nothing');
  answers.replaceChildren(...now.answers.map((says, i) => {
    const button = document.createElement('button');
    button.type = 'button';
    button.className = 'btn' + (now.cameTrue === i ? ' came' : '');
    button.disabled = now.phase !== 'asking';
    button.setAttribute('aria-pressed', String(now.mine === i));
    const bold = document.createElement('b');
    bold.textContent = letter(i);
    button.append(bold, document.createTextNode(' ' + says));
    button.addEventListener('click', () => say(now.bet, i));
    return button;
  }));
  told.textContent = now.phase === 'asking' ? (now.mine === null ? text('think') : text('said', letter(now.mine)))
    : now.phase === 'running' ? text('running')
    : now.phase === 'told' ? ended(now)
    : '';
}

function ended({ cameTrue, mine, lesson }) {
  if (cameTrue < 0) return mine === null ? text('none', lesson) : text('noneUnlike', letter(mine), lesson);
  return mine === null ? text('came', letter(cameTrue), lesson)
    : mine === cameTrue ? text('cameAsSaid', letter(cameTrue), lesson)
    : text('cameUnlike', letter(cameTrue), letter(mine), lesson);
}

async function look() {
  try {
    const reply = await fetch('/answer/now?phone=' + phone, { cache: 'no-store' });
    if (reply.ok) show(await reply.json());
  } catch {
    told.textContent = text('lost');
    shown = '';
  }
}

async function say(bet, answer) {
  try {
    await fetch('/answer/say', { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify({ phone, bet, answer }) });
  } catch { /* told by the next look */ }
  await look();
}

await look();
document.body.dataset.alive = 'yes';
setInterval(look, 1500);
