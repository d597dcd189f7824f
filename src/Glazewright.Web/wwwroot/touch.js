// Corners and things of a drawing that can be dragged. The picture follows the pointer at once; the server is told where they were let go.
export function begin(overlay, teller) {
    let drag = null;
    const all = '[data-corner], [data-thing]';
    const name = handle => handle.dataset.corner ?? handle.dataset.thing;
    const spot = event => {
        const point = new DOMPoint(event.clientX, event.clientY).matrixTransform(overlay.getScreenCTM().inverse());
        return [point.x, point.y];
    };
    overlay.addEventListener('pointerdown', event => {
        const handle = event.target.closest(all);
        if (!handle || handle.getAttribute('aria-disabled') === 'true') { return; }
        drag = { handle, id: event.pointerId, start: spot(event), at: [Number(handle.dataset.x), Number(handle.dataset.y)] };
        overlay.setPointerCapture(event.pointerId);
        event.preventDefault();
        handle.focus();
    });
    overlay.addEventListener('pointermove', event => {
        if (!drag || event.pointerId !== drag.id) { return; }
        const [x, y] = spot(event), moves = drag.handle.dataset.moves;
        drag.now = [moves === 'up' ? drag.at[0] : drag.at[0] + x - drag.start[0], moves === 'along' ? drag.at[1] : drag.at[1] + y - drag.start[1]];
        preview(drag.handle, drag.now);
    });
    const done = event => {
        if (!drag || event.pointerId !== drag.id) { return; }
        const ended = drag;
        drag = null;
        overlay.querySelector('.preview').setAttribute('points', '');
        if (event.type === 'pointerup' && ended.now) { teller.invokeMethodAsync('Dropped', name(ended.handle), ended.now[0], ended.now[1]); }
    };
    overlay.addEventListener('pointerup', done);
    overlay.addEventListener('pointercancel', done);
    // A key that moves something does not scroll the page.
    overlay.addEventListener('keydown', event => { if (event.target.closest(all) && event.key.startsWith('Arrow')) { event.preventDefault(); } });
    overlay.dataset.ready = 'true';

    // A thing is drawn as its own outline, a corner with the line through all of them.
    function preview(handle, [x, y]) {
        const wide = Number(handle.dataset.wide), high = Number(handle.dataset.high);
        const points = handle.dataset.thing ? [[x, y], [x + wide, y], [x + wide, y + high], [x, y + high], [x, y]]
            : [...overlay.querySelectorAll(all)].map(h => h === handle ? [x, y] : [Number(h.dataset.x), Number(h.dataset.y)]);
        overlay.querySelector('.preview').setAttribute('points', points.map(p => p.join(',')).join(' '));
    }
}

/** Tells the server where a picture was pressed, in the picture's own millimetres. */
export function pick(overlay, teller) {
    overlay.addEventListener('click', event => {
        const point = new DOMPoint(event.clientX, event.clientY).matrixTransform(overlay.getScreenCTM().inverse());
        teller.invokeMethodAsync('Picked', point.x, point.y);
    });
    overlay.dataset.ready = 'true';
}
