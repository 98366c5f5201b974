// The page that is served fetches its sheet; without a network it comes from the phone.
(async () => {
  try {
    const answer = await fetch('sheet.json' + location.search);
    if (!answer.ok) throw new Error(await answer.text());
    const sheet = await answer.json();
    await page.start(sheet);
    await sync.start(sheet);
    sync.shelve();
  } catch (why) {
    document.getElementById('main').replaceChildren(el('h1', {}, text('noWalkDown')), el('p', { class: 'lead' }, String(why.message || text('noAnswer'))));
    document.body.dataset.alive = 'yes';
  }
})();
