import { type DefaultTreeAdapterTypes, parse } from 'parse5';
import { describe, expect, test } from 'vitest';
import { placeOfAttribute, tagsIn } from '../../src/built/tags.ts';

const namesIn = (html: string): string[] => tagsIn(html).map(({ tagName }) => tagName);

describe('which tags begin in a page, as the HTML standard reads it', () => {
  test.each<[says: string, html: string, names: string[]]>([
    ['none in nothing', '', []],
    ['none in words', 'a < b, and b > a', []],
    ['one in another', '<p><b>a</b></p>', ['p', 'b']],
    ['one that ends itself', '<br/><path d="M0 0"/>', ['br', 'path']],
    ['in whatever letters it is written', '<P><Br>', ['p', 'br']],
    ['none in a comment', '<!-- <p> --><i>', ['i']],
    ['none in an attribute', '<p title="<b>">', ['p']],
    ['none in a script', '<script>a("<p>")</script><i>', ['script', 'i']],
    ['none in a style sheet', '<style>a { content: "<p>" }</style><i>', ['style', 'i']],
    ['none in a title', '<title><p></title><i>', ['title', 'i']],
    ['none in a box for words', '<textarea><p></textarea><i>', ['textarea', 'i']],
    ['what a template holds', '<template><p></template>', ['template', 'p']],
    ['what readers without script see', '<noscript><a href="/do/">do</a></noscript>', ['noscript', 'a']],
    ['none where signs are written out', '<code>&lt;p&gt;</code>', ['code']],
  ])('%s', (_, html, names) => {
    expect(namesIn(html)).toEqual(names);
  });
});

test('an attribute that is written twice counts once, by the first', () => {
  expect(tagsIn('<a href="/x" href="/y">').map(({ attrs }) => attrs)).toEqual([
    [{ name: 'href', value: '/x' }],
  ]);
});

describe('where an attribute stands', () => {
  const html = 'one\n  <a id="b"\n href="/c">';
  test.each([
    ['on the line of its tag', 'id', { line: 2, column: 6 }],
    ['on the next line', 'href', { line: 3, column: 2 }],
    ['nowhere: where the tag begins', 'src', { line: 2, column: 3 }],
  ] as const)('%s', (_, name, place) => {
    expect(tagsIn(html).map((tag) => placeOfAttribute(tag, name))).toEqual([place]);
  });
});

/** A page with all kinds of things that pages have. */
const page = `<!DOCTYPE html>
<html lang="en" data-root="/"><head><meta charset="utf-8"><title>1 < 2 <b></title>
<style>p > b { content: "<i>" }</style><script type="module" src="/a.js"></script></head>
<body><!-- <p> --><a class=skip href=#main>To the page</a>
<main id="main"><h1>Depth & weight</h1><noscript><p><a href="#b">below</a></p></noscript>
<template><li>row</li></template><table><tr><th scope="row">a<td>b</table>
<svg viewBox="0 0 1 1"><title>A b</title><defs><linearGradient id="g"/></defs><path d="M0 0"/><a xlink:href="/x"><text>1</text></a></svg>
<form><input value="a > b" disabled><textarea>
<p></textarea><select><option selected>1<option>2</select></form>
<p>one<p>two<br><script>if (a < b) c('<p>');</script></main></body></html>`;

test('a page has the tags that the whole parser of the same library finds in it', () => {
  const found: string[] = [];
  const walk = (node: DefaultTreeAdapterTypes.Node): void => {
    if ('sourceCodeLocation' in node && 'tagName' in node && node.sourceCodeLocation)
      found.push(node.tagName);
    if ('content' in node) walk(node.content);
    if ('childNodes' in node) node.childNodes.forEach(walk);
  };
  walk(parse(page, { sourceCodeLocationInfo: true, scriptingEnabled: false }));
  // Names of drawings keep their capitals in the tree alone.
  expect(namesIn(page)).toEqual(found.map((name) => name.toLowerCase()));
});
