// Before anything is painted: the theme that was chosen on this machine.
try {
    const chosen = localStorage.getItem('theme');
    if (chosen === 'light' || chosen === 'dark') { document.documentElement.dataset.theme = chosen; }
} catch { /* a browser that keeps nothing follows the system */ }
