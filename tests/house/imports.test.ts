/** Holds every import in the house to the module table in DEVELOPERS.md, and says what to do when one strays. */
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { describe, expect, test } from 'vitest';

const TOP = resolve(import.meta.dirname, '..', '..');

/** Of the model, what anybody may read: named one by one, so that what is new stays outside. */
const OF_THE_LIBRARY: ReadonlySet<string> = new Set([
  'exercise',
  'identity',
  'kit',
  'picture',
  'programme',
  'prose',
  'public-library',
  'rulebook',
  'studio',
]);

interface Module {
  readonly name: string;
  readonly mayImport: readonly string[];
  readonly doors: readonly string[];
  readonly absent: string;
}

const split = (cell: string): string[] =>
  cell
    .split(',')
    .map((word) => word.trim().replaceAll('`', ''))
    .filter((word) => word !== '');

function readTable(): Map<string, Module> {
  const page = readFileSync(join(TOP, 'DEVELOPERS.md'), 'utf8');
  const section = page.slice(page.indexOf('\n## Modules'), page.indexOf('\n## To change X'));
  const rows = section.split('\n').filter((line) => /^\| `[a-z]+` \|/.test(line));
  return new Map(
    rows.map((row) => {
      const [, name = '', , , may = '', doors = '', absent = ''] = row.split('|').map((cell) => cell.trim());
      const module = { name: name.replaceAll('`', ''), mayImport: split(may), doors: split(doors), absent };
      return [module.name, module];
    }),
  );
}

function sources(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return sources(path);
    return /\.(tsx?|mjs)$/.test(entry.name) && !entry.name.endsWith('.d.ts') ? [path] : [];
  });
}

function importsOf(file: string): string[] {
  // `import(name)` with a computed name is not used in this house; the pattern needs a literal.
  const text = readFileSync(file, 'utf8').replaceAll(/^\s*(\/\/|\*|\/\*).*$/gm, '');
  const pattern =
    /(?:^|[\n;])\s*(?:import|export)\s(?:[^'"`;]*?\sfrom\s)?\s*['"]([^'"]+)['"]|import\(\s*['"]([^'"]+)['"]\s*\)/g;
  return [...text.matchAll(pattern)].map((match) => match[1] ?? match[2] ?? '');
}

function moduleOf(path: string): string {
  const [first = '', second = ''] = relative(TOP, path).split('/');
  return first === 'src' ? second : first;
}

const packageOf = (specifier: string): string =>
  specifier.startsWith('node:')
    ? 'node'
    : specifier
        .split('/')
        .slice(0, specifier.startsWith('@') ? 2 : 1)
        .join('/');

/** What is wrong with one import, with the remedy; `undefined` if it is in order. */
function faultOf(file: string, specifier: string, table: Map<string, Module>): string | undefined {
  const from = moduleOf(file);
  const where = relative(TOP, file);
  const module = table.get(from);
  if (module === undefined)
    return `${where}: src/${from} is not in the module table of DEVELOPERS.md. Add its row: job, verb, imports, doors, what is absent.`;
  if (specifier.startsWith('.')) {
    const to = moduleOf(resolve(dirname(file), specifier));
    if (to === from || module.mayImport.includes('all') || module.mayImport.includes(to)) return undefined;
    return `${where}: ${from} may not import ${to} (${specifier}). Hand the value in as an argument from src/app, or move the type both need to src/model. ${from} deliberately has no: ${module.absent}.`;
  }
  const door = packageOf(specifier);
  if (module.doors.includes(door)) return undefined;
  const owner = [...table.values()].find((other) => other.doors.includes(door));
  return owner
    ? `${where}: the door to ${door} is src/${owner.name}. Put the call there and hand ${from} its result.`
    : `${where}: no module has a door to ${door}. Use what the house has, or give one module a door in the table of DEVELOPERS.md and pin the package.`;
}

const table = readTable();
const files = [...sources(join(TOP, 'src')), ...sources(join(TOP, 'layouts'))];

describe('imports run one way', () => {
  test('the table is read', () => {
    expect([...table.keys()]).toContain('engine');
    expect(table.get('model')?.mayImport).toEqual(['nothing']);
    expect(files.length).toBeGreaterThan(20);
    // A room that is gone leaves the table, and one that is built enters it.
    expect([...table.keys()].sort()).toEqual([...new Set(files.map(moduleOf))].sort());
  });

  test('every import is one the table allows', () => {
    const faults = files.flatMap((file) => importsOf(file).map((name) => faultOf(file, name, table) ?? ''));
    expect(faults.filter((fault) => fault !== '')).toEqual([]);
  });

  test('a stray import is caught, with its remedy', () => {
    const file = join(TOP, 'src', 'engine', 'plan-block.ts');
    expect(faultOf(file, '../content/read-folder.js', table)).toContain('engine may not import content');
    expect(faultOf(file, 'luxon', table)).toContain('the door to luxon is');
    expect(faultOf(file, 'node:fs', table)).toContain('the door to node is src/app');
    expect(faultOf(file, 'left-pad', table)).toContain('no module has a door');
    expect(faultOf(file, '../model/plan.js', table)).toBeUndefined();
  });

  test('the public library never meets a client', () => {
    const library = files.filter((file) =>
      /^(src\/web\/library|layouts\/library|src\/search)\//.test(relative(TOP, file)),
    );
    expect(library.length).toBeGreaterThan(0);
    const faults = library.flatMap((file) =>
      importsOf(file)
        .filter((name) => name.includes('/model/') && !OF_THE_LIBRARY.has(name.replace(/^.*\/model\/|\.js$/g, '')))
        .map(
          (name) =>
            `${relative(TOP, file)}: the library may not import ${name}. What a page of the library shows comes from Exercise and Programme alone.`,
        ),
    );
    expect(faults).toEqual([]);
  });

  test('no module imports in a circle', () => {
    const edges = new Map<string, string[]>();
    for (const file of files) {
      const key = relative(TOP, file).replace(/\.tsx?$/, '');
      edges.set(
        key,
        importsOf(file)
          .filter((name) => name.startsWith('.'))
          .map((name) => relative(TOP, resolve(dirname(file), name)).replace(/\.js$/, '')),
      );
    }
    const done = new Set<string>();
    const visit = (key: string, path: readonly string[]): string | undefined => {
      if (path.includes(key)) return [...path.slice(path.indexOf(key)), key].join(' → ');
      if (done.has(key)) return undefined;
      for (const next of edges.get(key) ?? []) {
        const circle = visit(next, [...path, key]);
        if (circle !== undefined) return circle;
      }
      done.add(key);
      return undefined;
    };
    expect([...edges.keys()].map((key) => visit(key, [])).filter((circle) => circle !== undefined)).toEqual([]);
  });
});
