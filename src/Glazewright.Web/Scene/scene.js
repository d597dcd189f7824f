// The range in three dimensions, in one canvas. The server gives the model, the sun and the cut; this file draws them, and draws only when something has changed.
import * as THREE from 'three';
import { OrbitControls } from 'three/addons/controls/OrbitControls.js';
import { GLTFLoader } from 'three/addons/loaders/GLTFLoader.js';
import { CSS2DObject, CSS2DRenderer } from 'three/addons/renderers/CSS2DRenderer.js';

const rooms = new Map();
const shadowMap = 2048;

/** Starts a view in an element; answers false where the browser draws no three-dimensional pictures. */
export function begin(element, teller) {
    end();
    if (!element) { return false; }
    let renderer;
    try {
        renderer = new THREE.WebGLRenderer({ antialias: true, canvas: element.querySelector('canvas') });
    } catch {
        return false;
    }
    const room = makeRoom(element, renderer, teller);
    rooms.set(element, room);
    room.resize();
    return true;
}

/** Shows a model (bytes of a binary glTF file), looking where one looked before if it is not the first. */
export async function show(element, bytes) {
    const room = rooms.get(element);
    if (!room) { return; }
    const mine = ++room.newest;
    const gltf = await new GLTFLoader().parseAsync(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength), '');
    if (mine !== room.newest) { return; }
    const isFirst = !room.model;
    room.replace(gltf.scene);
    if (isFirst) { room.look('south-east'); }
    room.draw();
    element.dataset.model = String(mine);
}

/** Puts the sun: a unit vector to it (x east, y up, z south); below the horizon it is night. */
export function sun(element, x, y, z) { rooms.get(element)?.putSun(x, y, z); }

/** Cuts a building at a share of its length, 0 to 1; 1 leaves it whole. */
export function cut(element, building, share) { rooms.get(element)?.cutAt(building, share); }

/** Shows or hides a part of every building (frame, covering, doors, equipment, ground) or the names of equipment. */
export function part(element, name, isShown) { rooms.get(element)?.showPart(name, isShown); }

/** Lays a light map into a building (four bytes a cell, along fastest, the left wall first) at a height, in place of the one before; an empty name takes it away. */
export function lay(element, building, columns, rows, colours, length, width, height, words) { rooms.get(element)?.lay(building && { building, columns, rows, colours, length, width, height, words }); }

/** Looks from a named side. */
export function look(element, from) { const room = rooms.get(element); room?.look(from); room?.draw(); }

/** Ends the views that have left the page and gives their memory back. */
export function end() {
    for (const [element, room] of rooms) {
        if (!element.isConnected) {
            room.end();
            rooms.delete(element);
        }
    }
}

function makeRoom(element, renderer, teller) {
    const scene = new THREE.Scene();
    const camera = new THREE.PerspectiveCamera(40, 1, 0.2, 2000);
    const controls = new OrbitControls(camera, renderer.domElement);
    const names = new CSS2DRenderer({ element: element.querySelector('.scene-names') });
    const day = new THREE.DirectionalLight(0xffffff, 2.6);
    const sky = new THREE.HemisphereLight(0xffffff, 0xb9b19d, 1.3);
    const ground = new THREE.Mesh(new THREE.PlaneGeometry(1, 1), new THREE.ShadowMaterial({ opacity: 0.28, depthWrite: false }));
    // Shadows fall on a sheet of their own over one of the page's colour: lit ground would end in a horizon.
    const base = new THREE.Mesh(ground.geometry, new THREE.MeshBasicMaterial({ polygonOffset: true, polygonOffsetFactor: 4, polygonOffsetUnits: 4 }));
    const knife = new THREE.Plane(new THREE.Vector3(1, 0, 0), 1e6);
    const away = new AbortController();
    const room = { newest: 0, model: null };
    let hidden = new Set(['names']);
    let centre = new THREE.Vector3(), radius = 10, asked = false, cutBuilding = '', cutShare = 1, direction = new THREE.Vector3(0.3, 0.8, 0.5);

    ground.rotation.x = base.rotation.x = -Math.PI / 2;
    ground.position.y = -0.02;
    base.position.y = -0.04;
    ground.receiveShadow = true;
    scene.add(base, ground, sky, day, day.target);
    renderer.shadowMap.enabled = true;
    renderer.shadowMap.type = THREE.PCFShadowMap;
    renderer.localClippingEnabled = true;
    day.castShadow = true;
    day.shadow.mapSize.set(shadowMap, shadowMap);
    day.shadow.normalBias = 0.03;
    controls.enableDamping = false;
    controls.maxPolarAngle = Math.PI / 2 - 0.02;
    controls.addEventListener('change', () => room.draw());

    room.draw = () => {
        if (asked) { return; }
        asked = true;
        requestAnimationFrame(() => {
            asked = false;
            renderer.render(scene, camera);
            names.render(scene, camera);
            if (!hidden.has('names')) { spaceNames(); }
            element.dataset.drawn = String(Number(element.dataset.drawn ?? 0) + 1);
        });
    };

    room.resize = () => {
        const width = element.clientWidth, height = element.clientHeight;
        if (width === 0 || height === 0) { return; }
        renderer.setPixelRatio(Math.min(devicePixelRatio, 2));
        renderer.setSize(width, height, false);
        names.setSize(width, height);
        camera.aspect = width / height;
        camera.updateProjectionMatrix();
        room.draw();
    };

    room.paint = () => {
        const tokens = getComputedStyle(document.documentElement);
        const isNight = direction.y <= 0;
        scene.background = new THREE.Color(tokens.getPropertyValue('--wash').trim());
        base.material.color.copy(scene.background);
        sky.intensity = isNight ? 0.5 : 1.3;
        day.intensity = isNight ? 0 : 2.6 * Math.min(1, direction.y * 4 + 0.25);
        room.draw();
    };

    room.replace = model => {
        const kept = map;
        room.lay(null);
        if (room.model) { scene.remove(room.model); free(room.model); }
        room.model = model;
        model.traverse(node => {
            if (!node.isMesh) { return; }
            const isClear = node.material.transparent;
            node.castShadow = !isClear;
            node.receiveShadow = !isClear;
            node.material.side = THREE.DoubleSide;
            if (isClear) { node.material.depthWrite = false; node.renderOrder = 1; }
        });
        // Each building has materials of its own, so that one is cut and the others are not.
        for (const building of model.children[0]?.children ?? []) {
            const own = new Map();
            building.traverse(node => {
                if (!node.isMesh) { return; }
                if (!own.has(node.material)) { own.set(node.material, node.material.clone()); }
                node.material = own.get(node.material);
            });
        }
        scene.add(model);
        model.updateMatrixWorld(true);
        const box = new THREE.Box3().setFromObject(model);
        centre = box.getCenter(new THREE.Vector3());
        radius = box.getSize(new THREE.Vector3()).length() / 2;
        for (const sheet of [base, ground]) {
            sheet.scale.setScalar(radius * 30);
            sheet.position.x = centre.x;
            sheet.position.z = centre.z;
        }
        camera.near = radius / 200;
        camera.far = radius * 20;
        controls.maxDistance = radius * 6;
        camera.updateProjectionMatrix();
        nameEquipment(model);
        for (const each of hidden) { room.showPart(each, false); }
        aimSun();
        room.lay(kept);
    };

    room.putSun = (x, y, z) => { direction.set(x, y, z); aimSun(); room.paint(); };

    room.cutAt = (building, share) => {
        cutBuilding = building;
        cutShare = share;
        const root = room.model && building ? find(building) : null;
        room.model?.traverse(node => { if (node.isMesh) { node.material.clippingPlanes = null; } });
        if (root && share < 1) {
            const box = new THREE.Box3();
            const inverse = root.matrixWorld.clone().invert();
            root.traverse(node => {
                if (!node.isMesh) { return; }
                node.geometry.computeBoundingBox();
                box.union(node.geometry.boundingBox.clone().applyMatrix4(inverse.clone().multiply(node.matrixWorld)));
            });
            const along = new THREE.Vector3(-1, 0, 0).transformDirection(root.matrixWorld);
            const at = new THREE.Vector3(box.min.x + share * (box.max.x - box.min.x), 0, 0).applyMatrix4(root.matrixWorld);
            knife.setFromNormalAndCoplanarPoint(along, at);
            root.traverse(node => { if (node.isMesh) { node.material.clippingPlanes = [knife]; node.material.clipShadows = true; } });
        }
        room.draw();
    };

    let map = null, laid = null;
    room.lay = next => {
        map = next || null;
        if (laid) { laid.removeFromParent(); laid.geometry.dispose(); laid.material.map.dispose(); laid.material.dispose(); laid = null; }
        const root = map && room.model ? find(map.building) : null;
        if (root) {
            const texture = new THREE.DataTexture(new Uint8Array(map.colours), map.columns, map.rows);
            texture.colorSpace = THREE.SRGBColorSpace;
            texture.needsUpdate = true;
            laid = new THREE.Mesh(new THREE.PlaneGeometry(map.length, map.width), new THREE.MeshBasicMaterial({ map: texture, side: THREE.DoubleSide }));
            laid.position.set(map.length / 2, map.width / 2, map.height + 0.03);
            laid.userData.label = map.words;
            root.add(laid);
        }
        // The map is that of the open curtain: cloth over it would tint its colours.
        room.model?.traverse(node => { if (/curtain/i.test(node.userData.label ?? '')) { node.visible = !laid; } });
        element.dataset.laid = laid ? map.building : '';
        room.cutAt(cutBuilding, cutShare);
    };

    room.showPart = (name, isShown) => {
        if (isShown) { hidden.delete(name); } else { hidden.add(name); }
        if (!room.model) { return; }
        room.model.traverse(node => {
            if (name === 'names' ? node.isCSS2DObject : node.name.endsWith('/' + name) || node.userData.name?.endsWith('/' + name)) { node.visible = isShown; }
        });
        room.draw();
    };

    room.look = from => {
        const far = radius / Math.sin(camera.fov * Math.PI / 360) * Math.max(1, 1.1 / camera.aspect) * 0.75;
        const sides = { 'south-east': [0.65, 0.45, 0.6], 'south-west': [-0.65, 0.45, 0.6], 'north-east': [0.65, 0.45, -0.6], 'north-west': [-0.65, 0.45, -0.6], above: [0, 1, 0.001] };
        controls.target.copy(centre);
        camera.position.copy(centre).add(new THREE.Vector3(...(sides[from] ?? sides['south-east'])).normalize().multiplyScalar(far));
        controls.update();
    };

    room.end = () => {
        away.abort();
        watcher.disconnect();
        theme.disconnect();
        if (room.model) { free(room.model); }
        controls.dispose();
        renderer.dispose();
    };

    function find(building) {
        let found = null;
        room.model.traverse(node => { if (!found && (node.userData.name ?? node.name) === building && node.children.length > 0) { found = node; } });
        return found;
    }

    function aimSun() {
        day.target.position.copy(centre);
        day.position.copy(centre).addScaledVector(direction, radius * 2.5);
        const shot = day.shadow.camera;
        shot.left = shot.bottom = -radius * 1.1;
        shot.right = shot.top = radius * 1.1;
        shot.near = radius * 0.2;
        shot.far = radius * 5;
        shot.updateProjectionMatrix();
    }

    function nameEquipment(model) {
        const named = [];
        model.traverse(node => { if (node.userData.label && /\/equipment$/.test(node.parent?.userData.name ?? node.parent?.name ?? '')) { named.push(node); } });
        for (const node of named) {
            const text = document.createElement('span');
            text.textContent = node.userData.label;
            const label = new CSS2DObject(text);
            const mesh = node.isMesh ? node : node.children.find(c => c.isMesh);
            if (mesh) { mesh.geometry.computeBoundingBox(); mesh.geometry.boundingBox.getCenter(label.position); }
            node.add(label);
        }
    }

    // Names of the building that is looked at, the nearest first; one that would stand on another waits until one comes nearer.
    function spaceNames() {
        const place = new THREE.Vector3(), taken = [];
        const all = [];
        const root = room.model && cutBuilding ? find(cutBuilding) : room.model;
        room.model?.traverse(node => { if (node.isCSS2DObject) { node.element.style.visibility = 'hidden'; } });
        root?.traverse(node => { if (node.isCSS2DObject && isSeen(node)) { all.push([node, node.getWorldPosition(place).distanceTo(camera.position)]); } });
        all.sort((a, b) => a[1] - b[1]);
        for (const [node] of all) {
            const isCut = cutShare < 1 && knife.distanceToPoint(node.getWorldPosition(place)) < 0;
            const box = node.element.getBoundingClientRect();
            if (isCut || box.width === 0 || taken.some(t => t.left < box.right && box.left < t.right && t.top < box.bottom && box.top < t.bottom)) { continue; }
            node.element.style.visibility = 'visible';
            taken.push(box);
        }
    }

    function partAt(event) {
        const frame = renderer.domElement.getBoundingClientRect();
        const point = new THREE.Vector2((event.clientX - frame.left) / frame.width * 2 - 1, 1 - (event.clientY - frame.top) / frame.height * 2);
        const ray = new THREE.Raycaster();
        ray.setFromCamera(point, camera);
        const hits = ray.intersectObject(room.model, true).filter(h => isSeen(h.object) && (h.object.material.clippingPlanes ?? []).every(p => p.distanceToPoint(h.point) >= 0));
        const solid = hits.find(h => !h.object.material.transparent) ?? hits[0];
        let node = solid?.object;
        while (node && !node.userData.label) { node = node.parent; }
        return node ? [node.userData.label, node.userData.mark ?? ''] : null;
    }

    let pressed = null;
    renderer.domElement.addEventListener('pointerdown', e => { pressed = [e.clientX, e.clientY]; }, { signal: away.signal });
    renderer.domElement.addEventListener('pointerup', e => {
        const isStill = pressed && Math.hypot(e.clientX - pressed[0], e.clientY - pressed[1]) < 4;
        if (isStill && room.model) { const found = partAt(e); teller.invokeMethodAsync('Touched', found?.[0] ?? '', found?.[1] ?? ''); }
    }, { signal: away.signal });
    renderer.domElement.addEventListener('keydown', e => {
        const step = Math.PI / 24, offset = camera.position.clone().sub(controls.target), ball = new THREE.Spherical().setFromVector3(offset);
        const moves = { ArrowLeft: () => ball.theta -= step, ArrowRight: () => ball.theta += step, ArrowUp: () => ball.phi -= step, ArrowDown: () => ball.phi += step, '+': () => ball.radius *= 0.9, '=': () => ball.radius *= 0.9, '-': () => ball.radius /= 0.9 };
        if (!moves[e.key] || e.ctrlKey || e.altKey || e.metaKey) { return; }
        moves[e.key]();
        ball.phi = Math.min(controls.maxPolarAngle, Math.max(0.01, ball.phi));
        camera.position.copy(controls.target).add(new THREE.Vector3().setFromSpherical(ball));
        controls.update();
        room.draw();
        e.preventDefault();
    }, { signal: away.signal });
    const watcher = new ResizeObserver(room.resize);
    watcher.observe(element);
    const theme = new MutationObserver(room.paint);
    theme.observe(document.documentElement, { attributes: true, attributeFilter: ['data-theme'] });
    matchMedia('(prefers-color-scheme: dark)').addEventListener('change', room.paint, { signal: away.signal });
    room.paint();
    return room;
}

function isSeen(node) {
    for (let each = node; each; each = each.parent) { if (!each.visible) { return false; } }
    return true;
}

function free(model) {
    model.traverse(node => {
        if (node.isCSS2DObject) { node.element.remove(); }
        if (node.isMesh) { node.geometry.dispose(); node.material.dispose(); }
    });
}
