// Values under the pointer, or under a mark that the arrow keys move. They are asked for once, when someone first points.
export function begin(overlay, teller) {
    const mark = overlay.querySelector('.cell'), says = overlay.closest('.scroll').nextElementSibling;
    let grids = null, asked = null, at = null;
    const load = () => asked ??= teller.invokeMethodAsync('Values').then(values => { grids = values; }, () => { asked = null; });

    function show(g, column, row) {
        const grid = grids[g];
        at = { g, column: Math.min(Math.max(column, 0), grid.columns - 1), row: Math.min(Math.max(row, 0), grid.rows - 1) };
        const wide = grid.width / grid.columns, high = grid.height / grid.rows;
        mark.setAttribute('x', grid.left + at.column * wide);
        mark.setAttribute('y', grid.top + grid.height - (at.row + 1) * high);
        mark.setAttribute('width', Math.max(wide, 0.6));
        mark.setAttribute('height', high);
        const index = at.column * grid.rows + at.row;
        const words = `${[grid.name, grid.columnNames[at.column], grid.rowNames[at.row]].filter(name => name).join(', ')}: ${grid.words[grid.told[index]]}`;
        says.textContent = words;
        overlay.setAttribute('aria-valuemax', grid.columns * grid.rows - 1);
        overlay.setAttribute('aria-valuenow', index);
        overlay.setAttribute('aria-valuetext', words);
    }

    const under = async event => {
        const [x, y] = [event.clientX, event.clientY];
        await load();
        if (!grids) { return; }
        const spot = new DOMPoint(x, y).matrixTransform(overlay.getScreenCTM().inverse());
        const g = grids.findIndex(r => spot.x >= r.left && spot.x < r.left + r.width && spot.y >= r.top && spot.y < r.top + r.height);
        if (g >= 0) {
            const grid = grids[g];
            show(g, Math.floor((spot.x - grid.left) / grid.width * grid.columns), Math.floor((grid.top + grid.height - spot.y) / grid.height * grid.rows));
        }
    };
    overlay.addEventListener('pointermove', under);
    overlay.addEventListener('pointerdown', under);
    const steps = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] };
    overlay.addEventListener('keydown', async event => {
        const step = steps[event.key], turn = event.key === 'PageDown' ? 1 : event.key === 'PageUp' ? -1 : 0;
        if (!step && !turn) { return; }
        event.preventDefault();
        await load();
        if (!grids) { return; }
        const far = event.shiftKey ? 10 : 1;
        if (!at) { show(0, 0, 0); }
        else if (turn) { show((at.g + turn + grids.length) % grids.length, at.column, at.row); }
        else { show(at.g, at.column + step[0] * far, at.row + step[1] * far); }
    });
    overlay.dataset.ready = 'true';
}
