import ts from 'typescript'

/** Whether another word than the one that stands at `start` of the file would be refused by the compiler. */
export type RefusesWord = (file: string, start: number, word: string) => boolean

/**
 * A kind of a saying, a case of a union: another word there does not compile, so it is no mutant. Where the compiler asks
 * for no word in particular, or nobody can say what it asks for, any is one.
 *
 * @param files  absolute paths of sources
 */
export function refusedWords(files: readonly string[]): RefusesWord {
  const program = ts.createProgram(files, {
    ...{ target: ts.ScriptTarget.ES2023, module: ts.ModuleKind.NodeNext, strict: true, noEmit: true },
    ...{ allowImportingTsExtensions: true, types: [] },
  })
  const checker = program.getTypeChecker()
  const asked = new Map<string, ts.Type>()
  for (const file of files) {
    const visit = (node: ts.Node): void => {
      if (ts.isStringLiteral(node)) {
        const type = typeAsked(node, checker)
        if (type !== undefined) asked.set(`${file} ${node.getStart()}`, type)
      }
      ts.forEachChild(node, visit)
    }
    visit(program.getSourceFile(file)!)
  }
  return (file, start, word) => {
    const type = asked.get(`${file} ${start}`)
    return type !== undefined && !takes(type, word)
  }
}

function typeAsked(node: ts.StringLiteral, checker: ts.TypeChecker): ts.Type | undefined {
  const { parent } = node
  if (!ts.isBinaryExpression(parent)) return checker.getContextualType(node)
  const operator = parent.operatorToken.kind
  if (operator !== ts.SyntaxKind.EqualsEqualsEqualsToken && operator !== ts.SyntaxKind.ExclamationEqualsEqualsToken)
    return checker.getContextualType(node)
  return checker.getTypeAtLocation(parent.left === node ? parent.right : parent.left)
}

function takes(type: ts.Type, word: string): boolean {
  if (type.isUnion()) return type.types.some((one) => takes(one, word))
  if (type.isStringLiteral()) return type.value === word
  const others = ts.TypeFlags.Null | ts.TypeFlags.Undefined | ts.TypeFlags.NumberLike | ts.TypeFlags.BooleanLike
  return (type.flags & others) === 0
}
