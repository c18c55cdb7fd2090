// Moves things on a drawing: by pointer, by keys. Every place goes to the desk, which works it out; here drawings and entries are only exchanged.
'use strict';

const bench = () => document.querySelector('[data-bench]');
let busy = false, waiting = null, leaving = false;

const axisOf = text => {
    if (!text) return null;
    const [field, origin, scale, first, step, stride, digits] = text.split('|');
    return { field: decodeURIComponent(field), origin: +origin, scale: +scale, first: +first, step: +step, stride: +stride, digits: +digits };
};
const fieldOf = name => bench().querySelector('form.moves').elements[name];
const numberAt = (axis, place) => (axis.first + (place - axis.origin) / axis.scale).toFixed(axis.digits).replace(/^-0(\.0*)?$/, '0').replace(/(\.\d*?)0+$/, '$1').replace(/\.$/, '');
const placeOf = (axis, number) => axis.origin + (number - axis.first) * axis.scale;

// What is held: where it was, where it is, and how it moves.
function hold(grip) {
    return { grip, across: axisOf(grip.dataset.across), down: axisOf(grip.dataset.down), from: { x: +grip.dataset.x, y: +grip.dataset.y }, x: +grip.dataset.x, y: +grip.dataset.y, onto: null };
}

function show(held) {
    held.grip.setAttribute('transform', `translate(${held.x - held.from.x} ${held.y - held.from.y})`);
    held.grip.classList.toggle('moved', held.x !== held.from.x || held.y !== held.from.y);
    for (const place of document.querySelectorAll('.place.chosen')) place.classList.remove('chosen');
    if (held.onto) held.onto.classList.add('chosen');
}

// Writes where it is into its fields; what is moved along one way only keeps the other.
function write(held) {
    if (held.grip.dataset.onto) {
        if (held.onto) fieldOf(held.grip.dataset.onto).value = held.onto.dataset.place;
        return;
    }
    for (const [axis, place] of [[held.across, held.x], [held.down, held.y]]) {
        if (axis) fieldOf(axis.field).value = numberAt(axis, place);
    }
}

async function ask(what, live) {
    if (busy) {
        waiting = [what, live];
        return;
    }
    busy = true;
    const form = bench().querySelector('form.moves'), data = new URLSearchParams(new FormData(form));
    data.set('do', what);
    data.set('part', 'yes');
    try {
        const answer = await fetch(form.action, { method: 'POST', body: data });
        const next = new DOMParser().parseFromString(await answer.text(), 'text/html').querySelector('[data-bench]');
        if (!next) throw new Error(answer.status);
        if (live) exchange(next, answer.ok);
        else replace(next, answer.ok);
    } catch {
        bench().querySelector('[data-said]').textContent = 'The desk does not answer. Nothing was moved; try again.';
    } finally {
        busy = false;
        if (waiting) {
            const [then, alive] = waiting;
            waiting = null;
            // What was let go meanwhile is worked out as it now stands.
            if (!alive || holding) ask(then, alive);
        }
    }
}

// While something is held only what lies behind it follows.
function exchange(next, ok) {
    if (!ok) return;
    for (const part of bench().querySelectorAll('[data-live]')) {
        const other = next.querySelector(`[data-live="${CSS.escape(part.dataset.live)}"]`);
        if (other && !(holding && holding.grip.dataset.edge && part.dataset.live === 'plan')) part.replaceChildren(...other.childNodes);
    }
}

function replace(next, ok) {
    const before = bench(), active = document.activeElement;
    const held = active?.closest?.('[data-grip]')?.dataset.grip, name = active?.name, edge = active?.dataset?.down ? 'data-down' : 'data-across';
    const scrolled = [...before.querySelectorAll('.scroll')].map(one => one.scrollLeft);
    if (!ok) {
        // What was refused goes back to where it was; the reason stays at its thing, and a swap may still be asked for.
        const offered = next.querySelector('button[value^="put|"]');
        for (const field of next.querySelectorAll('[data-good]')) if (!offered && held) field.value = field.dataset.good;
    }
    before.replaceWith(document.adoptNode(next));
    begin();
    bench().querySelectorAll('.scroll').forEach((one, at) => { one.scrollLeft = scrolled[at] ?? 0; });
    const again = held ? bench().querySelector(`[data-grip="${CSS.escape(held)}"][${edge}]`) ?? bench().querySelector(`[data-grip="${CSS.escape(held)}"]`) : name && bench().querySelector(`form.moves [name="${CSS.escape(name)}"]`);
    (bench().querySelector('button[value^="put|"]') ?? again)?.focus({ preventScroll: true });
}

let holding = null, keyed = null;

// The places onto which a thing can be put that lie in a direction, the nearest first.
function next(held, dx, dy) {
    const middle = one => { const box = one.getBoundingClientRect(); return { x: box.x + box.width / 2, y: box.y + box.height / 2 }; };
    const from = middle(held.onto ?? held.grip);
    return [...bench().querySelectorAll('.place')].map(place => ({ place, at: middle(place) }))
        .map(one => ({ ...one, ahead: (one.at.x - from.x) * dx + (one.at.y - from.y) * dy, aside: Math.abs((one.at.x - from.x) * dy) + Math.abs((one.at.y - from.y) * dx) }))
        .filter(one => one.ahead > 4 && one.aside < one.ahead * 1.2).sort((one, other) => one.ahead + 2 * one.aside - other.ahead - 2 * other.aside)[0]?.place;
}

function put(held, place) {
    held.onto = place;
    const svg = held.grip.ownerSVGElement;
    if (place.ownerSVGElement === svg) {
        const box = place.getBBox();
        held.x = box.x + box.width / 2;
        held.y = box.y + box.height / 2;
    }
}

function undo(held) {
    held.x = held.from.x;
    held.y = held.from.y;
    held.onto = null;
    show(held);
    for (const name of [held.grip.dataset.onto, held.across?.field, held.down?.field]) if (name) fieldOf(name).value = fieldOf(name).dataset.good;
}

function onKey(event) {
    const grip = event.target.closest('[data-grip]');
    if (!grip || event.altKey || event.metaKey) return;
    if (event.ctrlKey) {
        if (event.key === 'z') bench().querySelector('button[value=back]:not(:disabled)')?.click();
        return;
    }
    const [dx, dy] = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[event.key] ?? [0, 0];
    if (keyed?.grip !== grip) {
        if (keyed) undo(keyed);
        keyed = hold(grip);
    }
    if (dx || dy) {
        event.preventDefault();
        if (grip.dataset.onto) {
            const place = next(keyed, dx, dy);
            if (place) put(keyed, place);
        } else {
            const axis = dx ? keyed.across : keyed.down;
            if (!axis) return;
            const way = (dx || dy) * Math.sign(axis.scale), number = +numberAt(axis, dx ? keyed.x : keyed.y) + way * (event.shiftKey ? axis.stride : axis.step);
            keyed[dx ? 'x' : 'y'] = placeOf(axis, number);
        }
        show(keyed);
        write(keyed);
    } else if (event.key === 'Enter') {
        event.preventDefault();
        keyed = null;
        ask('try', false);
    } else if (event.key === 'Escape') {
        event.preventDefault();
        if (keyed.x !== keyed.from.x || keyed.y !== keyed.from.y || keyed.onto) undo(keyed);
        else bench().querySelector('button[value=back]:not(:disabled)')?.click();
    }
}

function onDown(event) {
    const grip = event.target.closest('[data-grip]');
    if (!grip || event.button !== 0) return;
    event.preventDefault();
    grip.focus({ preventScroll: true });
    const svg = grip.ownerSVGElement, turn = svg.getScreenCTM().inverse(), at = point => new DOMPoint(point.clientX, point.clientY).matrixTransform(turn);
    const begun = at(event);
    holding = hold(grip);
    keyed = null;
    grip.setPointerCapture(event.pointerId);
    const move = moved => {
        const now = at(moved);
        if (holding.across || holding.grip.dataset.onto) holding.x = holding.from.x + now.x - begun.x;
        if (holding.down || holding.grip.dataset.onto) holding.y = holding.from.y + now.y - begun.y;
        if (grip.dataset.onto) holding.onto = document.elementsFromPoint(moved.clientX, moved.clientY).find(one => one.classList.contains('place')) ?? null;
        show(holding);
        if (grip.dataset.onto) return;
        write(holding);
        ask('look', true);
    };
    const end = () => {
        grip.removeEventListener('pointermove', move);
        grip.removeEventListener('pointerup', drop);
        grip.removeEventListener('pointercancel', cancel);
        document.removeEventListener('keydown', escape, true);
    };
    const drop = () => {
        end();
        const held = holding;
        holding = null;
        if (Math.hypot(held.x - held.from.x, held.y - held.from.y) < 1 || (grip.dataset.onto && !held.onto)) undo(held);
        else {
            write(held);
            ask('try', false);
        }
    };
    const cancel = () => {
        end();
        const held = holding;
        holding = null;
        undo(held);
        ask('look', true);
    };
    const escape = key => {
        if (key.key !== 'Escape') return;
        key.preventDefault();
        key.stopPropagation();
        cancel();
    };
    grip.addEventListener('pointermove', move);
    grip.addEventListener('pointerup', drop);
    grip.addEventListener('pointercancel', cancel);
    document.addEventListener('keydown', escape, true);
}

function onSubmit(event) {
    const what = event.submitter?.value ?? 'try';
    if (what === 'save') {
        leaving = true;
        return;
    }
    event.preventDefault();
    ask(what, false);
}

function begin() {
    const here = bench();
    keyed = null;
    here.addEventListener('keydown', onKey);
    here.addEventListener('pointerdown', onDown);
    // A finger on a thing moves that, and not the page; said here, since what is drawn inside a drawing does not take it from the style sheet.
    here.addEventListener('touchstart', event => { if (event.target.closest('[data-grip]')) event.preventDefault(); }, { passive: false });
    here.addEventListener('dragstart', event => event.preventDefault());
    here.addEventListener('click', event => { if (event.target.closest('[data-grip]')) event.preventDefault(); });
    here.querySelector('form.moves').addEventListener('submit', onSubmit);
}

window.addEventListener('beforeunload', event => {
    if (bench()?.dataset.moved && !leaving) event.preventDefault();
});

begin();
