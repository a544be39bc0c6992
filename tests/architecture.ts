/** Checks of the layout: each takes a path and a text and returns what is wrong, in words. */
import { posix } from 'node:path';
import ts from 'typescript';

/** The rooms of src, in their order: a file may import its own room and those before it. */
export const rooms: readonly string[] = [
  'names.ts',
  'kept.ts',
  'quantity',
  'numeric',
  'geometry',
  'mass.ts',
  'rolling',
  'contact',
  'strength',
  'wood',
  'sitter',
  'drawing',
  'design',
  'chair',
  'loads',
  'measures',
  'checks',
  'explore',
  'shop',
  'check-design.ts',
  'report',
  'starter',
  'cli',
  'index.ts',
];

/** npm packages and the rooms that may import them. */
const packageRooms: Readonly<Record<string, readonly string[]>> = {
  mathjs: ['quantity'],
  svgpath: ['geometry'],
  saxes: ['drawing'],
  'matter-js': ['contact'],
  yaml: ['design'],
  zod: ['design', 'report'],
  commander: ['cli'],
};

/** The room that may touch the world: files and the terminal, worker threads. */
const worldlyRoom = 'cli';

/** Names that hold anything and so say nothing. */
const emptyWords = ['util', 'helper', 'manager', 'service', 'common', 'misc', 'shared', 'stuff'];

/** Loose ends, and paths that exist on one machine only. Written so that this file does not hold them. */
const looseEnds: readonly RegExp[] = [
  /\b(TO[D]O|FIX[M]E)\b/,
  /\.(ski[p]|onl[y]|tod[o])[.(]/,
  /eslint[-]disable/,
  /@ts-(ignor[e]|nochec[k]|expect-erro[r])/,
  /(?:^|[\s'"`(=:,])\/(home|root|work|tmp|Users)\//,
  /\b[A-Z]:\\+Users\\/,
];

/** `src/rolling/rest.ts` → `rolling`, `src/names.ts` → `names.ts`. */
export const roomOf = (path: string): string => path.split('/')[1] ?? path;

/** What a text imports, types too, in order; a target that is not a plain string is `(computed)`. */
export function importsOf(text: string): string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    const target = importTarget(node);
    if (target) found.push(ts.isStringLiteralLike(target) ? target.text : '(computed)');
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile('text.ts', text, ts.ScriptTarget.Latest));
  return found;
}

function importTarget(node: ts.Node): ts.Node | undefined {
  if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) return node.moduleSpecifier;
  if (ts.isImportTypeNode(node))
    return ts.isLiteralTypeNode(node.argument) ? node.argument.literal : node.argument;
  if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword)
    return node.arguments[0];
  return undefined;
}

export function importProblems(path: string, text: string): string[] {
  return importsOf(text).flatMap((specifier) => {
    const reason = importProblem(path, specifier);
    return reason === undefined ? [] : [`${path} imports ${specifier}: ${reason}`];
  });
}

function importProblem(path: string, specifier: string): string | undefined {
  if (specifier === '(computed)') return 'a computed target cannot be checked';
  if (specifier.startsWith('.')) return relativeProblem(path, specifier);
  if (!specifier.startsWith('node:')) return packageProblem(path, specifier);
  return roomOf(path) === worldlyRoom ? undefined : `only ${worldlyRoom} touches the world`;
}

function relativeProblem(path: string, specifier: string): string | undefined {
  if (!specifier.endsWith('.js')) return 'relative imports end in .js';
  const target = posix.join(posix.dirname(path), specifier).replace(/\.js$/, '.ts');
  if (!target.startsWith('src/')) return 'it lies outside src';
  if (!rooms.includes(roomOf(target))) return `no room ${roomOf(target)} in the list`;
  if (rooms.indexOf(roomOf(target)) > rooms.indexOf(roomOf(path))) {
    return `${roomOf(target)} stands below ${roomOf(path)}`;
  }
  const sides = [path, target].map((file) => /^src\/drawing\/(read|write)\//.exec(file)?.[1]);
  if (sides[0] && sides[1] && sides[0] !== sides[1]) return 'drawing/read and drawing/write share nothing';
  return undefined;
}

function packageProblem(path: string, specifier: string): string | undefined {
  const name = /^(@[^/]+\/)?[^/]+/.exec(specifier)?.[0] ?? specifier;
  const allowed = packageRooms[name];
  if (!allowed) return `no room for the package ${name}`;
  return allowed.includes(roomOf(path)) ? undefined : `${name} is imported only in ${allowed.join(' and ')}`;
}

export function nameProblems(path: string): string[] {
  const words = path.toLowerCase().split(/[^a-z]+/);
  const empty = emptyWords.filter((word) => words.includes(word) || words.includes(`${word}s`));
  const problems = empty.map((word) => `${path}: the name "${word}" says nothing`);
  return rooms.includes(roomOf(path))
    ? problems
    : [...problems, `${path}: no room ${roomOf(path)} in the list`];
}

export function wordProblems(path: string, text: string): string[] {
  return text
    .split('\n')
    .flatMap((line, index) =>
      looseEnds.some((pattern) => pattern.test(line)) ? [`${path}:${index + 1}: ${line.trim()}`] : [],
    );
}
