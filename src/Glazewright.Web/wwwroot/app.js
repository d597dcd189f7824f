// What a page cannot do by the server: the theme, the clipboard, and coming back after the server was away.
document.addEventListener('click', event => {
    const toggle = event.target.closest?.('[data-theme-toggle]');
    if (toggle) {
        const root = document.documentElement;
        const dark = root.dataset.theme ? root.dataset.theme === 'dark' : matchMedia('(prefers-color-scheme: dark)').matches;
        root.dataset.theme = dark ? 'light' : 'dark';
        try { localStorage.setItem('theme', root.dataset.theme); } catch { /* kept for this page only */ }
    }
    const copy = event.target.closest?.('[data-copy]');
    if (copy) {
        navigator.clipboard.writeText(copy.dataset.copy).then(() => { copy.textContent = 'Copied'; }, () => { copy.textContent = 'The browser does not allow copying'; });
    }
});

// A server that was started anew knows this page's job and not this page: load it again once it answers.
let waiting = false;
async function comeBack() {
    if (waiting) { return; }
    waiting = true;
    for (;;) {
        try {
            if ((await fetch('/health', { cache: 'no-store' })).ok) { location.reload(); return; }
        } catch { /* not yet */ }
        await new Promise(done => setTimeout(done, 1000));
    }
}
document.getElementById('components-reconnect-modal')?.addEventListener('components-reconnect-state-changed', event => {
    if (event.detail.state === 'rejected' || event.detail.state === 'failed') { comeBack(); }
});
