// Markdown by chance: words and marks that were hard before, in lines, lists, quotes and headings.

import fc from 'fast-check'

const word = fc.constantFrom(
  'Tam',
  'hen',
  'sh**ee**p',
  '**sh**ip',
  'd*o*g',
  'tip-top',
  'don’t',
  "it's",
  'caf&eacute;',
  'cafe\u0301',
  'sh\u00ADeep',
  'p&shy;ig',
  'ﬁsh',
  'o**ﬀ**',
  '6',
  '3rd',
  '1,000',
  '*pond*',
  '**wet**',
  '_cup_',
  '[red](x.png "adult")',
  'Don&rsquo;t',
  '\\*star\\*',
  'sat',
  'sun',
  'in',
  'Mr.',
  'שלום',
  'naïve',
  '&#104;at',
  'A&amp;B',
  '***big***',
)
const between = fc.constantFrom(
  ' ',
  ' ',
  ' ',
  ' ',
  '  ',
  ', ',
  '. ',
  '! ',
  '? ',
  ' — ',
  '…',
  ' “',
  '” ',
  '\n',
  '\n',
  '  \n',
  '\\\n',
  ' \n   ',
  ' &amp; ',
  ' \\# ',
  ' 😀 ',
  ' 👨‍👩‍👧 ',
  ' `adult` ',
  ' https://adult.org/adult ',
  ' (www.adult.org). ',
  ' adult@adult.org, ',
  ' ![adult](a.png) ',
  ' <!-- adult --> ',
  ' <b>',
  '</b> ',
  '<br>',
  '. ',
)
export const line = fc
  .array(fc.tuple(word, between), { minLength: 1, maxLength: 12 })
  .map((parts) => parts.flat().join(''))

export const indent = (text: string, first: string, rest: string) => first + text.replaceAll('\n', `\n${rest}`)
const block = fc.oneof(
  line,
  line.map((it) => indent(it, '- ', '  ')),
  line.map((it) => indent(it, '1. ', '   ')),
  line.map((it) => indent(it, '- - ', '    ')),
  line.map((it) => indent(it, '- ', '')),
  line.map((it) => `### ${it.replaceAll(/\\?\n/g, ' ')}`),
  line.map((it) => indent(it, '> ', '> ')),
  fc.constantFrom('---', '##', '<!-- note -->', '![adult](a.png)', '<div>\n\nhen\n\n</div>'),
)
/** Sources of up to eight blocks, with each kind of line end, with and without a byte order mark. */
export const toMarkdown = (one: fc.Arbitrary<string>): fc.Arbitrary<string> =>
  fc
    .tuple(fc.array(one, { minLength: 1, maxLength: 8 }), fc.constantFrom('\n', '\r\n'), fc.constantFrom('', '\uFEFF'))
    .map(([blocks, end, mark]) => mark + blocks.join('\n\n').replaceAll('\n', end))

export const markdown = toMarkdown(block)
