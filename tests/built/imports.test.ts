import { describe, expect, test } from 'vitest';
import { importsOf } from '../../src/built/imports.ts';

const atOnce = (from: string) => ({ from, later: false });
const later = (from: string) => ({ from, later: true });

const cases = [
  { title: 'an import', code: 'import{a as b}from"./a.js";b()', found: [atOnce('./a.js')] },
  { title: 'an import for its work alone', code: 'import"./a.js"', found: [atOnce('./a.js')] },
  {
    title: 'what is handed on',
    code: 'export*from"./a.js";export{b}from"./b.js";export const c=1',
    found: [atOnce('./a.js'), atOnce('./b.js')],
  },
  {
    title: 'an import for later, in either kind of quotes',
    code: 'const f=()=>import(`./a.js`).then(()=>import("./b.js"))',
    found: [later('./a.js'), later('./b.js')],
  },
  {
    title: 'an import for later deep inside others’ arguments',
    code: 'const t=Object.assign({"../x/fill.ts":()=>p(()=>import(`./fill.1.js`),m([0]))})',
    found: [later('./fill.1.js')],
  },
  { title: 'an address put together as it runs', code: 'import("./"+name);import(from)', found: [] },
  {
    title: 'words that look like an import',
    code: 'const t="import(`./a.js`)";// import "./b.js"',
    found: [],
  },
];

describe('the imports of a script', () => {
  test.each(cases)('$title', ({ code, found }) => {
    expect(importsOf(code)).toEqual(found);
  });
});
