import { readdirSync, readFileSync } from 'node:fs'
import ts from 'typescript'
import { expect, test } from 'vitest'

const web = new URL('../', import.meta.url)

const views = readdirSync(web, { recursive: true, encoding: 'utf8' }).filter(
  (path) => path.endsWith('.tsx') && !path.includes('messages'),
)

/** Attributes that somebody reads or hears. */
const shownAttributes = ['aria-label', 'aria-description', 'aria-valuetext', 'title', 'placeholder', 'alt', 'label']

const bothSides = [ts.SyntaxKind.BarBarToken, ts.SyntaxKind.QuestionQuestionToken, ts.SyntaxKind.PlusToken]

/** Texts that a view shows or gives to a screen reader and that are written in its code. */
function textsIn(path: string, code: string): string[] {
  const file = ts.createSourceFile(path, code, ts.ScriptTarget.ESNext, true, ts.ScriptKind.TSX)
  const found: string[] = []
  const add = (node: ts.Node, text: string): void => {
    if (/\p{L}{2,}/u.test(text))
      found.push(`${path}:${file.getLineAndCharacterOfPosition(node.getStart()).line + 1}: ${text.trim()}`)
  }
  /** Literals that an expression can come out as. */
  const literals = (node: ts.Node): void => {
    if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) add(node, node.text)
    else if (ts.isTemplateExpression(node)) {
      add(node, [node.head.text, ...node.templateSpans.map(({ literal }) => literal.text)].join(' '))
      for (const { expression } of node.templateSpans) literals(expression)
    } else if (ts.isConditionalExpression(node)) {
      literals(node.whenTrue)
      literals(node.whenFalse)
    } else if (ts.isParenthesizedExpression(node)) literals(node.expression)
    else if (ts.isBinaryExpression(node)) {
      const { kind } = node.operatorToken
      if (bothSides.includes(kind)) literals(node.left)
      if (bothSides.includes(kind) || kind === ts.SyntaxKind.AmpersandAmpersandToken) literals(node.right)
    }
  }
  const visit = (node: ts.Node): void => {
    if (ts.isJsxText(node)) add(node, node.text)
    if (ts.isJsxExpression(node) && node.expression !== undefined && !ts.isJsxAttribute(node.parent))
      literals(node.expression)
    if (ts.isJsxAttribute(node) && shownAttributes.includes(node.name.getText()) && node.initializer !== undefined) {
      if (ts.isStringLiteral(node.initializer)) add(node, node.initializer.text)
      else if (ts.isJsxExpression(node.initializer) && node.initializer.expression !== undefined)
        literals(node.initializer.expression)
    }
    ts.forEachChild(node, visit)
  }
  visit(file)
  return found
}

test('no view has a text in its code', () => {
  expect(views.length).toBeGreaterThan(40)
  expect(views.flatMap((path) => textsIn(path, readFileSync(new URL(path, web), 'utf8')))).toEqual([])
})

test('the scan finds texts wherever they stand', () => {
  const code = `const V = () => (
    <div title="Close it" class="plain words">
      Hello {isOn ? 'switched on' : m.off} {\`and \${n} more\`} <img alt={'A post'} /> {n === 'ids are fine' && <i>–</i>}
    </div>
  )`
  expect(textsIn('view.tsx', code).map((one) => one.replace(/^.*?: /, ''))).toEqual([
    'Close it',
    'Hello',
    'switched on',
    'and   more',
    'A post',
  ])
})
