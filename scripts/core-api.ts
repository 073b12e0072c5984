import { fileURLToPath } from 'node:url'
import ts from 'typescript'

const types = fileURLToPath(new URL('../dist/types/core/', import.meta.url))

/** The declarations that `lapwise/core` exports and those that they name, without comments; the types have to be built. */
export function coreApi(): string {
  const options = { moduleResolution: ts.ModuleResolutionKind.Bundler, types: [], lib: ['lib.es2023.d.ts'] }
  const program = ts.createProgram([`${types}index.d.ts`], { ...options, target: ts.ScriptTarget.ES2023 })
  const checker = program.getTypeChecker()
  const entry = checker.getSymbolAtLocation(program.getSourceFile(`${types}index.d.ts`)!)!
  const exported = new Map(checker.getExportsOfModule(entry).map((symbol) => [original(checker, symbol), symbol.name]))
  const reached = new Set(exported.keys())
  // The set grows while it is walked.
  for (const symbol of reached) for (const named of namedIn(checker, symbol)) reached.add(named)
  const inOrder = [...reached].sort((a, b) => (keyOf(a) < keyOf(b) ? -1 : 1))
  return [
    '// Written by `npx tsx scripts/write-api.ts`. What lapwise/core exports, then every type that is reached from it.',
    ...inOrder.filter((one) => exported.has(one)).map((one) => textOf(one, exported.get(one)!)),
    '// Reached',
    ...inOrder.filter((one) => !exported.has(one)).map((one) => textOf(one, one.name)),
    '',
  ].join('\n')
}

const original = (checker: ts.TypeChecker, symbol: ts.Symbol): ts.Symbol =>
  symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol

/** Two files may each have a type of one name. */
const keyOf = (symbol: ts.Symbol): string => `${symbol.name} ${fileOf(symbol)}`

const fileOf = (symbol: ts.Symbol): string => symbol.declarations?.[0]?.getSourceFile().fileName ?? ''

/** What the declaration of a symbol names that is declared on the top of a file of ours. */
function namedIn(checker: ts.TypeChecker, symbol: ts.Symbol): readonly ts.Symbol[] {
  const found: ts.Symbol[] = []
  const look = (node: ts.Node): void => {
    const at = ts.isIdentifier(node) ? checker.getSymbolAtLocation(node) : undefined
    const named = at && original(checker, at)
    if (named && isOnTop(named) && fileOf(named).startsWith(types)) found.push(named)
    ts.forEachChild(node, look)
  }
  for (const declaration of symbol.declarations ?? []) look(declaration)
  return found
}

const isOnTop = ({ declarations }: ts.Symbol): boolean => {
  const [declaration] = declarations ?? []
  const parent = declaration && (ts.isVariableDeclaration(declaration) ? declaration.parent.parent : declaration).parent
  return parent !== undefined && ts.isSourceFile(parent)
}

function textOf({ declarations = [] }: ts.Symbol, name: string): string {
  const printer = ts.createPrinter({ removeComments: true })
  const texts = declarations.map((one) => {
    const whole = ts.isVariableDeclaration(one) ? one.parent.parent : one
    return printer.printNode(ts.EmitHint.Unspecified, whole, one.getSourceFile())
  })
  return `// ${name}\n${texts.join('\n')}`
}
