// Where text stands in a block of HTML. What is a tag, a comment, a reference or a script: the HTML standard (WHATWG, 13.1 Writing HTML
// documents), from memory; a mark that begins none of them stands for itself.

import { expect, it } from 'vitest'
import { findHtmlText } from '../../src/story/html.ts'

it.each([
  ['  a  ', 'a'],
  ['<p>a</p>', 'a'],
  ['<p/>a', 'a'],
  ['<p\n>a', 'a'],
  ['<a-b>c</a-b>', 'c'],
  ['<br>\n  a b \n<br>', 'a b'],
  ['<p>6', '6'],
  ['<p>猫</p>', '猫'],
  ['<p>a &amp; b</p>', 'a &amp; b'],
  ['<p>a</p> — <p>b</p> !', 'a</p> — <p>b'],
  ['<p a="b > c">d</p>', 'd'],
  ["<p a='b > c'>d</p>", 'd'],
  ['a < b', 'a < b'],
  ['a <1> b', 'a <1> b'],
  ['<b', 'b'],
  ['& b', 'b'],
  ['&a;b', 'b'],
  ['&#65;b', 'b'],
  ['&#x1F600;b', 'b'],
  ['&#12345678;b', 'b'],
  ['&#123456789;b', '#123456789;b'],
  [`&${'a'.repeat(32)};b`, 'b'],
  [`&${'a'.repeat(33)};b`, `${'a'.repeat(33)};b`],
  ['<!DOCTYPE html>a', 'a'],
  ['<?xml a?>b', 'b'],
  ['<!-- a > b --> c', 'c'],
  ['<!-->a-->b', 'b'],
  ['<script>a</script>b', 'b'],
  ['<SCRIPT>a < b</SCRIPT>b', 'b'],
  ['<style a="b">a</style >b', 'b'],
  ['<scripts>a</scripts>', 'a'],
  ['<mystyle>a</mystyle>', 'a'],
  ['</p>a', 'a'],
  ['<script>a</script>b<style>c</style>d', 'b<style>c</style>d'],
])('of %j is %j', (html, text) => {
  const found = findHtmlText(html)
  expect(found && html.slice(found.start, found.end)).toBe(text)
})

it.each([
  '',
  ' ',
  '<p>',
  '<p> … </p>',
  '<p>&nbsp;&#160;</p>',
  '<!-- a',
  '<!a',
  '<?a',
  '<style>a',
  '<script>a<script>b',
  '<hr class="a">',
])('there is none in %j', (html) => {
  expect(findHtmlText(html)).toBeUndefined()
})
