// Corners of a drawing that can be dragged. The picture follows the pointer at once; the server is told where the corner was let go.
export function begin(overlay, teller) {
    let drag = null;
    const spot = event => {
        const point = new DOMPoint(event.clientX, event.clientY).matrixTransform(overlay.getScreenCTM().inverse());
        return [point.x, point.y];
    };
    overlay.addEventListener('pointerdown', event => {
        const handle = event.target.closest('[data-corner]');
        if (!handle || handle.getAttribute('aria-disabled') === 'true') { return; }
        drag = { handle, id: event.pointerId, start: spot(event), at: [Number(handle.dataset.x), Number(handle.dataset.y)] };
        overlay.setPointerCapture(event.pointerId);
        event.preventDefault();
        handle.focus();
    });
    overlay.addEventListener('pointermove', event => {
        if (!drag || event.pointerId !== drag.id) { return; }
        const [x, y] = spot(event), isFree = drag.handle.dataset.free === 'true';
        drag.now = [isFree ? drag.at[0] + x - drag.start[0] : drag.at[0], drag.at[1] + y - drag.start[1]];
        preview(drag.handle.dataset.corner, drag.now);
    });
    const done = event => {
        if (!drag || event.pointerId !== drag.id) { return; }
        const ended = drag;
        drag = null;
        overlay.querySelector('.preview').setAttribute('points', '');
        if (event.type === 'pointerup' && ended.now) { teller.invokeMethodAsync('Dropped', ended.handle.dataset.corner, ended.now[0], ended.now[1]); }
    };
    overlay.addEventListener('pointerup', done);
    overlay.addEventListener('pointercancel', done);
    // A key that moves a corner does not scroll the page.
    overlay.addEventListener('keydown', event => { if (event.target.closest('[data-corner]') && event.key.startsWith('Arrow')) { event.preventDefault(); } });

    function preview(corner, now) {
        const points = [...overlay.querySelectorAll('[data-corner]')].map(h => h.dataset.corner === corner ? now : [Number(h.dataset.x), Number(h.dataset.y)]);
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
