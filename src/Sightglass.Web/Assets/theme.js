// ?theme=light|dark holds while this tab is open.
const asked = new URLSearchParams(location.search).get('theme');
if (asked === 'light' || asked === 'dark') sessionStorage.setItem('theme', asked);
const kept = sessionStorage.getItem('theme');
if (kept) document.documentElement.dataset.theme = kept;
