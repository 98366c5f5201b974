// A phone in the room: asks what is asked, says what its holder thinks. Which phone it is is known to itself alone.
const phone = localStorage.getItem('phone') ?? crypto.randomUUID?.() ?? '00000000-0000-4000-8000-' + Array.from(crypto.getRandomValues(new Uint8Array(6)), b => b.toString(16).padStart(2, '0')).join('');
localStorage.setItem('phone', phone);
const asks = document.getElementById('asks'), answers = document.getElementById('answers'), told = document.getElementById('told');
let shown = '';

function show(now) {
  const what = JSON.stringify(now);
  if (what === shown) return;
  shown = what;
  asks.textContent = now.asks || 'Nothing is asked at the moment.';
  answers.replaceChildren(...now.answers.map((says, i) => {
    const button = document.createElement('button');
    button.type = 'button';
    button.className = 'btn' + (now.cameTrue === i ? ' came' : '');
    button.disabled = now.phase !== 'asking';
    button.setAttribute('aria-pressed', String(now.mine === i));
    const letter = document.createElement('b');
    letter.textContent = String.fromCharCode(65 + i);
    button.append(letter, document.createTextNode(' ' + says));
    button.addEventListener('click', () => say(now.bet, i));
    return button;
  }));
  told.textContent = now.phase === 'asking' ? (now.mine === null ? 'What do you think?' : `You say ${String.fromCharCode(65 + now.mine)}. You may change it until it is run.`)
    : now.phase === 'running' ? 'It is running. Look at the wall.'
    : now.phase === 'told' ? `${now.cameTrue >= 0 ? String.fromCharCode(65 + now.cameTrue) + ' came true' : 'No answer came true'}${now.mine === null ? '' : now.mine === now.cameTrue ? ', as you said' : `; you said ${String.fromCharCode(65 + now.mine)}`}. ${now.lesson}`
    : '';
}

async function look() {
  try {
    const reply = await fetch('/answer/now?phone=' + phone, { cache: 'no-store' });
    if (reply.ok) show(await reply.json());
  } catch {
    told.textContent = 'No connection. Your answer will be sent when you touch it again.';
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
