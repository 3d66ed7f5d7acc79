// Rewrites a source: its loops over arrays count, what it takes out of arrays it takes by place, and `flatMap` is a function of ours.

import ts from 'typescript'
import { applyEdits, type Edit } from './edits.ts'
import { isArray, isList, toElement } from './lists.ts'

interface Rewriting {
  readonly file: ts.SourceFile
  readonly checker: ts.TypeChecker
  readonly edits: Edit[]
  /** A name that the source has not. */
  name(): string
}

const FLAT_MAP = '$flatMap'
export const FLAT_MAP_FILE = 'counted-loops/flat-map'

type Callee = ts.ArrowFunction | ts.FunctionExpression | ts.FunctionDeclaration

/** The text of a source after that; TypeScript still. */
export function countLoops(file: ts.SourceFile, checker: ts.TypeChecker): string {
  let names = 0
  const rewriting: Rewriting = { file, checker, edits: [], name: () => `$${names++}` }
  const visit = (node: ts.Node): void => {
    if (ts.isForOfStatement(node)) rewriteLoop(node, rewriting)
    else if (ts.isVariableDeclaration(node)) rewriteDeclaration(node, rewriting)
    else if (ts.isCallExpression(node)) rewriteFlatMap(node, rewriting)
    else if (ts.isArrowFunction(node) || ts.isFunctionExpression(node) || ts.isFunctionDeclaration(node))
      rewriteParameters(node, rewriting)
    ts.forEachChild(node, visit)
  }
  visit(file)
  const text = applyEdits(file.text, rewriting.edits)
  return text.includes(`${FLAT_MAP}(`) ? `import { flatMap as ${FLAT_MAP} } from '${FLAT_MAP_FILE}'\n${text}` : text
}

/** `for (const x of list) …` → `for (let i = 0, a = list; i < a.length; i++) { const x = a[i]; … }` */
function rewriteLoop({ initializer, expression, statement, awaitModifier }: ts.ForOfStatement, all: Rewriting): void {
  if (awaitModifier || !ts.isVariableDeclarationList(initializer)) return
  const pattern = initializer.declarations[0]?.name
  if (!pattern) return
  const numbered = findNumbered(expression, pattern, all)
  const type = all.checker.getTypeAtLocation(numbered?.list ?? expression)
  if (!isList(type, all.checker)) return
  const at = all.name()
  const list = all.name()
  const taken = numbered
    ? [`${textOf(numbered.at, all)} = ${at}`, `${textOf(numbered.value, all)} = ${list}[${at}]`]
    : takeApart(pattern, toElement(type, 0, all.checker), `${list}[${at}]`, all)
  if (!taken) return
  all.edits.push(
    {
      from: initializer.getStart(all.file),
      to: expression.getStart(all.file),
      text: `let ${at} = 0, ${list} = `,
      isEnd: false,
    },
    ...(numbered ? [{ from: numbered.list.end, to: expression.end, text: '', isEnd: false }] : []),
    { from: expression.end, to: expression.end, text: `; ${at} < ${list}.length; ${at}++`, isEnd: true },
  )
  const kind = initializer.flags & ts.NodeFlags.Const ? 'const' : 'let'
  if (taken.length > 0) beginWith(`${kind} ${taken.join(', ')};`, statement, all)
}

/** `[at, value] of list.entries()` */
function findNumbered(expression: ts.Expression, pattern: ts.BindingName, { checker }: Rewriting) {
  if (!ts.isCallExpression(expression) || !ts.isPropertyAccessExpression(expression.expression)) return undefined
  const { name, expression: list } = expression.expression
  if (name.text !== 'entries' || !isArray(checker.getTypeAtLocation(list), checker)) return undefined
  if (!ts.isArrayBindingPattern(pattern)) return undefined
  const [at, value] = pattern.elements
  if (!at || !value || ts.isOmittedExpression(at) || ts.isOmittedExpression(value)) return undefined
  if (value.initializer || ts.isArrayBindingPattern(value.name)) return undefined
  return { list, at: at.name, value: value.name }
}

/** `const [x, y] = pair` → `const d = pair, x = d[0], y = d[1]` */
function rewriteDeclaration({ name, type, initializer }: ts.VariableDeclaration, all: Rewriting): void {
  if (!ts.isArrayBindingPattern(name) || !initializer) return
  const value = all.name()
  const taken = takeApart(name, all.checker.getTypeAtLocation(initializer), value, all)
  if (!taken) return
  const end = initializer.end
  all.edits.push(
    { from: name.getStart(all.file), to: type?.end ?? name.end, text: value, isEnd: false },
    { from: end, to: end, text: taken.map((one) => `, ${one}`).join(''), isEnd: true },
  )
}

/** `([x, y]) => x + y` → `(p) => { const x = p[0], y = p[1]; return (x + y) }` */
function rewriteParameters({ parameters, body }: Callee, all: Rewriting): void {
  if (!body || parameters.some(({ initializer }) => initializer)) return
  const found = parameters.flatMap((parameter) => {
    if (!ts.isArrayBindingPattern(parameter.name)) return []
    const value = all.name()
    return [
      { parameter, value, taken: takeApart(parameter.name, all.checker.getTypeAtLocation(parameter), value, all) },
    ]
  })
  if (found.length === 0 || found.some(({ taken }) => !taken)) return
  for (const { parameter, value } of found) {
    all.edits.push({ from: parameter.name.getStart(all.file), to: parameter.name.end, text: value, isEnd: false })
  }
  beginWith(`const ${found.flatMap(({ taken }) => taken ?? []).join(', ')};`, body, all)
}

/** `list.flatMap(make)` → `$flatMap(list, make)` */
function rewriteFlatMap({ expression, arguments: [make, ...others], flags }: ts.CallExpression, all: Rewriting): void {
  if (!ts.isPropertyAccessExpression(expression) || expression.name.text !== 'flatMap' || !make || others.length > 0)
    return
  const list = expression.expression
  if (flags & ts.NodeFlags.OptionalChain || !isArray(all.checker.getTypeAtLocation(list), all.checker)) return
  const start = list.getStart(all.file)
  all.edits.push(
    { from: start, to: start, text: `${FLAT_MAP}(`, isEnd: false },
    { from: list.end, to: make.getStart(all.file), text: ', ', isEnd: false },
  )
}

/** `x = value[0], { y } = value[1]`; nothing where the pattern takes apart what is no array. */
function takeApart(
  pattern: ts.BindingName,
  type: ts.Type,
  value: string,
  all: Rewriting,
): readonly string[] | undefined {
  if (!ts.isArrayBindingPattern(pattern)) return [`${textOf(pattern, all)} = ${value}`]
  if (!isList(type, all.checker)) return undefined
  const list = /^\$\d+$/.test(value) ? value : all.name()
  const taken = list === value ? [] : [`${list} = ${value}`]
  for (const [at, element] of pattern.elements.entries()) {
    if (ts.isOmittedExpression(element)) continue
    const one = takeOne(element, at, list, all)
    if (element.dotDotDotToken && !isArray(type, all.checker)) return undefined
    const inner = takeApart(element.name, toElement(type, at, all.checker), one, all)
    if (!inner) return undefined
    taken.push(...inner)
  }
  return taken
}

function takeOne({ dotDotDotToken, initializer }: ts.BindingElement, at: number, list: string, all: Rewriting): string {
  if (dotDotDotToken) return `${list}.slice(${at})`
  const one = `${list}[${at}]`
  return initializer ? `(${one} === undefined ? (${textOf(initializer, all)}) : ${one})` : one
}

function beginWith(text: string, body: ts.Statement | ts.ConciseBody, { file, edits }: Rewriting): void {
  const start = body.getStart(file)
  if (ts.isBlock(body)) {
    edits.push({ from: start + 1, to: start + 1, text: ` ${text}`, isEnd: false })
    return
  }
  const [open, close] = ts.isStatement(body) ? ['{', '}'] : ['{', ')}']
  const back = ts.isStatement(body) ? '' : ' return ('
  edits.push(
    { from: start, to: start, text: `${open} ${text}${back} `, isEnd: false },
    { from: body.end, to: body.end, text: ` ${close}`, isEnd: true },
  )
}

const textOf = (node: ts.Node, { file }: Rewriting): string => file.text.slice(node.getStart(file), node.end)
