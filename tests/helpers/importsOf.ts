import ts from 'typescript';

/** What a module imports, re-exports, loads later, starts as a worker or names in a type; as written. */
export function importsOf(path: string, text: string): string[] {
  const file = ts.createSourceFile(path, text, ts.ScriptTarget.Latest, false);
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    const specifier = specifierOf(node);
    if (specifier !== undefined && ts.isStringLiteralLike(specifier)) found.push(specifier.text);
    ts.forEachChild(node, visit);
  };
  visit(file);
  return found;
}

function specifierOf(node: ts.Node): ts.Node | undefined {
  if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) return node.moduleSpecifier;
  if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument)) return node.argument.literal;
  if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword)
    return node.arguments[0];
  if (ts.isNewExpression(node) && ts.isIdentifier(node.expression) && node.expression.text === 'URL') {
    const [address, base] = node.arguments ?? [];
    const isModule =
      address !== undefined && ts.isStringLiteralLike(address) && /[.][cm]?[jt]sx?$/.test(address.text);
    return isModule && base !== undefined ? address : undefined;
  }
  return undefined;
}
