// Reads a lesson aloud with the browser's own voice, one sentence after the other, where it has one.
let said = [], next = 0, speaking = false;
const button = () => document.getElementById('aloud'), line = () => document.getElementById('aloud-line');
const voice = globalThis.speechSynthesis;

/** What is to be read; whatever is being read stops. */
export function lines(sentences) {
  stop();
  said = sentences;
  next = 0;
  const b = button();
  if (!b || !voice || typeof SpeechSynthesisUtterance === 'undefined') return;
  b.hidden = sentences.length === 0;
  b.onclick = () => speaking ? stop() : go();
}

function go() {
  if (next >= said.length) next = 0;
  speaking = true;
  show();
  const utterance = new SpeechSynthesisUtterance(said[next]);
  utterance.lang = document.documentElement.lang;
  utterance.onend = () => {
    if (!speaking) return;
    next++;
    next < said.length ? go() : stop();
  };
  utterance.onerror = e => { if (e.error !== 'interrupted' && e.error !== 'canceled') stop(); };
  voice.speak(utterance);
}

function stop() {
  speaking = false;
  voice?.cancel();
  show();
}

function show() {
  const b = button(), l = line();
  if (b) b.textContent = speaking ? b.dataset.stop : next > 0 && next < said.length ? b.dataset.on : b.dataset.begin;
  if (l) {
    l.hidden = !speaking;
    l.textContent = speaking ? said[next] : '';
  }
}
