// Everything works without this; with it, long work tells how far it is by itself, and tables take what was copied from a spreadsheet.
'use strict';

for (const task of document.querySelectorAll('[data-events]')) {
    const source = new EventSource(task.dataset.events);
    source.onmessage = event => {
        const { told, over } = JSON.parse(event.data);
        task.querySelector('[data-told]').textContent = told;
        if (over) {
            source.close();
            location.reload();
        }
    };
}

// Cells of a row in order of its columns, rows in order.
function grid(table) {
    return [...table.tBodies[0].rows].map(row => [...row.querySelectorAll('input:not([type])')]);
}

function place(rows, input) {
    for (let row = 0; row < rows.length; row++) {
        const column = rows[row].indexOf(input);
        if (column >= 0) return { row, column: column - rows[row].length };
    }
    return null;
}

for (const table of document.querySelectorAll('table.cells')) {
    table.addEventListener('paste', event => {
        const text = event.clipboardData.getData('text/plain').replace(/\r?\n$/, '');
        if (!/[\t\n]/.test(text)) return;
        event.preventDefault();
        const rows = grid(table), from = place(rows, event.target);
        text.split(/\r?\n/).forEach((line, down) => line.split('\t').forEach((cell, right) => {
            const row = rows[from.row + down], at = row && row.length + from.column + right;
            if (row && at < row.length) row[at].value = cell.trim();
        }));
    });
    table.addEventListener('keydown', event => {
        const step = { ArrowUp: -1, ArrowDown: 1, Enter: 1 }[event.key];
        if (!step || event.target.type !== 'text' || (event.key === 'Enter' && (event.ctrlKey || event.metaKey))) return;
        const rows = grid(table), at = place(rows, event.target), row = at && rows[at.row + step];
        event.preventDefault();
        if (row && row.length + at.column >= 0) row[row.length + at.column].focus();
    });
}
