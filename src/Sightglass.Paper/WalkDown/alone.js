// The file that stands alone has its sheet within.
page.start(JSON.parse(document.getElementById('sheet').textContent));
