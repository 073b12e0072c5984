import ts from 'typescript'
import type { RefusesWord } from './refused-words.ts'

/** One small wrong in one module: the text from `start` to `end` replaced. */
export interface Mutant {
  readonly id: number
  readonly file: string
  readonly line: number
  readonly start: number
  readonly end: number
  readonly original: string
  readonly replacement: string
  /** A part of an expression is switched as it is evaluated, a statement as it is reached. */
  readonly node: 'expression' | 'statement'
}

type Change = Pick<Mutant, 'start' | 'end' | 'replacement' | 'node'>

/**
 * The mutants of one module, in the order of its text. What only a type checker sees (types, imports, another word where it
 * takes none), what only a person reads (texts with a space, refusals that are thrown) and the names of keys are left alone.
 *
 * @param from  the id of the first
 */
export function makeMutants(file: string, text: string, from: number, refuses: RefusesWord): Mutant[] {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true)
  const changes: Change[] = []
  const visit = (node: ts.Node): void => {
    if (isBesideTheProgram(node)) return
    for (const replacement of new Set(replacementsOf(node))) {
      if (ts.isStringLiteral(node) && refuses(file, node.getStart(), replacement.slice(1, -1))) continue
      changes.push({
        start: node.getStart(),
        end: node.end,
        replacement,
        node: ts.isStatement(node) ? 'statement' : 'expression',
      })
    }
    ts.forEachChild(node, visit)
  }
  visit(source)
  changes.sort((a, b) => a.start - b.start || b.end - a.end)
  return changes.map((change, at) => ({
    ...change,
    id: from + at,
    file,
    line: source.getLineAndCharacterOfPosition(change.start).line + 1,
    original: text.slice(change.start, change.end),
  }))
}

function isBesideTheProgram(node: ts.Node): boolean {
  return (
    ts.isTypeNode(node) ||
    ts.isImportDeclaration(node) ||
    ts.isExportDeclaration(node) ||
    ts.isInterfaceDeclaration(node) ||
    ts.isTypeAliasDeclaration(node) ||
    ts.isThrowStatement(node)
  )
}

function replacementsOf(node: ts.Node): string[] {
  if (ts.isBinaryExpression(node)) return ofBinary(node)
  if (ts.isPrefixUnaryExpression(node)) return ofPrefix(node)
  if (ts.isPostfixUnaryExpression(node))
    return [`${node.operand.getText()}${node.operator === ts.SyntaxKind.PlusPlusToken ? '--' : '++'}`]
  if (ts.isConditionalExpression(node)) return [node.whenTrue, node.whenFalse].map((part) => `(${part.getText()})`)
  if (node.kind === ts.SyntaxKind.TrueKeyword) return ['false']
  if (node.kind === ts.SyntaxKind.FalseKeyword) return ['true']
  if (ts.isNumericLiteral(node)) return isKey(node) ? [] : [String(Number(node.text.replaceAll('_', '')) + 1)]
  if (ts.isStringLiteral(node)) return ofString(node)
  if (ts.isCallExpression(node)) return ofCall(node)
  if (ts.isArrayLiteralExpression(node) && node.elements.length > 0 && !isPattern(node)) return ['[]']
  if (ts.isIfStatement(node)) return ofIf(node)
  if (ts.isExpressionStatement(node)) return [';']
  return []
}

const comparisons: Readonly<Record<string, readonly string[]>> = {
  '<': ['<=', '>='],
  '<=': ['<', '>'],
  '>': ['>=', '<='],
  '>=': ['>', '<'],
  '===': ['!=='],
  '!==': ['==='],
}

const arithmetic: Readonly<Record<string, string>> = {
  '+': '-',
  '-': '+',
  '*': '/',
  '/': '*',
  '%': '*',
  '+=': '-=',
  '-=': '+=',
  '*=': '/=',
  '/=': '*=',
}

function ofBinary(node: ts.BinaryExpression): string[] {
  const left = node.left.getText()
  const right = node.right.getText()
  const operator = node.operatorToken.getText()
  if (operator === '&&' || operator === '||') {
    const other = operator === '&&' ? '||' : '&&'
    // Brackets, since `??` does not stand beside these two without them.
    return [`((${left}) ${other} (${right}))`, `(${left})`, `(${right})`]
  }
  if (operator === '??') return [`(${right})`]
  if (operator in comparisons) return comparisons[operator]!.map((other) => `${left} ${other} ${right}`)
  if (operator in arithmetic && !isText(node.left) && !isText(node.right))
    return [`${left} ${arithmetic[operator]} ${right}`]
  return []
}

const isText = (node: ts.Node): boolean => ts.isStringLiteral(node) || ts.isTemplateLiteral(node)

function ofPrefix(node: ts.PrefixUnaryExpression): string[] {
  const operand = node.operand.getText()
  if (node.operator === ts.SyntaxKind.ExclamationToken || node.operator === ts.SyntaxKind.MinusToken)
    return [`(${operand})`]
  if (node.operator === ts.SyntaxKind.PlusPlusToken) return [`--${operand}`]
  if (node.operator === ts.SyntaxKind.MinusMinusToken) return [`++${operand}`]
  return []
}

/** Words that come in pairs: each is taken for the other. */
const pairs: readonly (readonly [string, string])[] = [
  ['upstream', 'downstream'],
  ['approach', 'departure'],
  ['left', 'right'],
  ['toward', 'away'],
  ['above', 'below'],
  ['before', 'after'],
  ['meets', 'fails'],
  ['least', 'greatest'],
]
const otherOf = new Map(pairs.flatMap(([a, b]) => [[a, b] as const, [b, a] as const]))

function ofString(node: ts.StringLiteral): string[] {
  if (isKey(node) || node.text.includes(' ')) return []
  return [`'${otherOf.get(node.text) ?? (node.text === '' ? 'mutant' : '')}'`]
}

/** Whether a literal names a key or a case rather than being a value. */
const isKey = (node: ts.Node): boolean =>
  (ts.isPropertyAssignment(node.parent) && node.parent.name === node) || ts.isCaseClause(node.parent)

const otherCalls: Readonly<Record<string, string>> = {
  min: 'max',
  max: 'min',
  ceil: 'floor',
  floor: 'ceil',
  round: 'floor',
  sin: 'cos',
  cos: 'sin',
  some: 'every',
  every: 'some',
  find: 'findLast',
  findLast: 'find',
  findIndex: 'findLastIndex',
  findLastIndex: 'findIndex',
}
const droppedCalls = new Set(['filter', 'sort', 'toSorted', 'reverse', 'toReversed', 'slice', 'concat', 'abs', 'sqrt'])

function ofCall(node: ts.CallExpression): string[] {
  if (!ts.isPropertyAccessExpression(node.expression)) return []
  const { expression: object, name } = node.expression
  const values = node.arguments.map((one) => one.getText()).join(', ')
  if (Object.hasOwn(otherCalls, name.text)) return [`${object.getText()}.${otherCalls[name.text]}(${values})`]
  if (!droppedCalls.has(name.text)) return []
  return [object.getText() === 'Math' ? `(${values})` : object.getText()]
}

const isPattern = (node: ts.Node): boolean =>
  ts.isBinaryExpression(node.parent) && node.parent.left === node && node.parent.operatorToken.getText() === '='

function ofIf(node: ts.IfStatement): string[] {
  const no = node.elseStatement === undefined ? ';' : node.elseStatement.getText()
  return [node.thenStatement.getText(), no]
}
