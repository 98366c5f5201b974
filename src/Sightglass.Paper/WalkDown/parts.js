// Small parts of the page: texts, elements, a question, a voice.

// What is said stands in the page, in its language.
const words = JSON.parse(document.getElementById('words').textContent);

/** A text with its gaps filled. */
function text(what, ...gaps) {
  return words[what].replace(/\{(\d)\}/g, (_, n) => gaps[n] ?? '');
}

/** An element with attributes and children; texts are texts, never markup. */
function el(tag, attributes = {}, ...children) {
  const e = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (name.startsWith('on')) e.addEventListener(name.slice(2), value);
    else if (value === true) e.setAttribute(name, '');
    else if (value !== false && value !== null && value !== undefined) e.setAttribute(name, value);
  }

  e.append(...children.flat().filter(c => c !== null && c !== undefined && c !== false));
  return e;
}

/** Asks for a text. Answers it, null when nothing is to change, false when what it names is to go. */
function ask(question, now, takeAway) {
  return new Promise(answer => {
    const input = el('input', { type: 'text', value: now ?? '', id: 'asked', maxlength: 120, enterkeyhint: 'done' });
    const dialog = el('dialog', { 'aria-labelledby': 'asked-title' },
      el('form', { method: 'dialog' },
        el('h2', { id: 'asked-title' }, question),
        el('label', { class: 'field', for: 'asked' }, el('span', {}, text('name')), input),
        el('div', { class: 'row' },
          el('button', { class: 'btn key', value: 'yes' }, text('keep')),
          el('button', { class: 'btn', value: 'away', formnovalidate: true }, takeAway))));
    dialog.addEventListener('close', () => {
      answer(dialog.returnValue === 'yes' ? input.value.trim() : dialog.returnValue === 'away' ? false : null);
      dialog.remove();
    });
    document.body.append(dialog);
    dialog.showModal();
    input.focus();
  });
}

/** A button that records what is said, where the phone lets the page hear; tells the recording. */
function voiceButton(told) {
  if (!navigator.mediaDevices?.getUserMedia || typeof MediaRecorder === 'undefined') return null;
  let recorder = null;
  const button = el('button', { class: 'btn', type: 'button', 'aria-pressed': 'false' }, text('record'));
  const end = () => {
    recorder = null;
    button.textContent = text('record');
    button.setAttribute('aria-pressed', 'false');
  };
  button.addEventListener('click', async () => {
    if (recorder) return recorder.stop();
    try {
      const hears = await navigator.mediaDevices.getUserMedia({ audio: true });
      const parts = [];
      recorder = new MediaRecorder(hears);
      recorder.ondataavailable = e => parts.push(e.data);
      recorder.onstop = () => {
        hears.getTracks().forEach(t => t.stop());
        const blob = new Blob(parts, { type: recorder.mimeType });
        end();
        told(blob);
      };
      recorder.start();
      const stop = () => recorder?.state === 'recording' && recorder.stop();
      setTimeout(stop, 120_000);
      // A phone may end a page that is not seen: what was said so far is kept first.
      document.addEventListener('visibilitychange', stop, { once: true });
      button.textContent = text('stopRecording');
      button.setAttribute('aria-pressed', 'true');
    } catch {
      end();
      button.textContent = text('mayNotHear');
    }
  });
  return button;
}
