/** Texts for people in program files: what a keeper would read that does not stand in the catalogue. */
import { readFileSync } from 'node:fs';
import { parseSync } from 'vite';

export interface OutsideText {
  readonly line: number;
  readonly text: string;
}

interface Node {
  readonly type: string;
  readonly start: number;
  readonly [field: string]: unknown;
}

/** Attributes whose text is for the program. */
const PROGRAM_ATTRIBUTES =
  /^(class|className|style|id|htmlFor|key|slot|role|rel|href|src|type|name|d|viewBox|transform|points|inputMode|autoComplete|data-.*|aria-(live|hidden|current|haspopup|controls|labelledby|describedby)|fill|stroke.*|textAnchor|dominantBaseline|preserveAspectRatio|accept|target|selector|placement|orientation|selectionMode|validationBehavior|part|queryKey|xmlns|lang)$/;
/** Names of keys and of the platform, which are no words for people. */
const PLATFORM =
  /^(Pouchful|Enter|Escape|Tab|Backspace|Delete|Home|End|Arrow(Up|Down|Left|Right)|Page(Up|Down)|Shift|Control|GET|PUT|POST|DELETE|Content-Type|If-Match|If-None-Match|Accept|Accept-Language|Authorization|Infinity|NaN|Boolean|Alt|Meta)$/;
/** Values of records and of the machine interface, which no screen says as they stand. */
const VALUES = new Set(['air dry', 'few to buy', 'no target', 'not surely']);
const TWO_WORDS = /[A-Za-zÀ-ÿ’']{2,}[,:;.]?\s+[“(‘]?[A-Za-zÀ-ÿ]{2,}/;
const LETTERS = /[A-Za-zÀ-ÿ]{2,}/;
const CAPITAL_WORD = /^[A-Z][a-zà-ÿ]+\b/;

/**
 * The texts of one file. In the browser client a single capitalised word counts too; elsewhere two words in a row.
 * What is thrown is not looked at outside the client, nor plain errors within: they are for callers and the command line.
 */
export function textsOutside(path: string, web: boolean): OutsideText[] {
  const code = readFileSync(path, 'utf8');
  const { program } = parseSync(path, code);
  const found: OutsideText[] = [];
  const tell = (node: Node, text: string) =>
    found.push({
      line: code.slice(0, node.start).split('\n').length,
      text: text.trim().replace(/\s+/g, ' '),
    });

  const isSaid = (text: string) =>
    TWO_WORDS.test(text) || (web && CAPITAL_WORD.test(text) && !PLATFORM.test(text));

  const look = (value: unknown): void => {
    if (Array.isArray(value)) {
      for (const item of value) look(item);
      return;
    }
    if (typeof value !== 'object' || value === null || typeof (value as Node).type !== 'string') return;
    const node = value as Node;
    switch (node.type) {
      case 'ImportDeclaration':
      case 'ExportAllDeclaration':
      case 'TSLiteralType':
      case 'TSTemplateLiteralType':
      case 'TSEnumDeclaration':
      case 'TSTypeAliasDeclaration':
      case 'TSInterfaceDeclaration':
        return;
      case 'ExportNamedDeclaration':
        look(node.declaration);
        return;
      case 'ThrowStatement': {
        const thrown = code.slice((node.argument as Node).start);
        if (web && !/^new (Range|Type)?Error\(/.test(thrown)) look(node.argument);
        return;
      }
      case 'CallExpression': {
        const callee = node.callee as Node;
        const at = code.slice(callee.start, callee.start + 40);
        if (
          /^(console\.|document\.query|[\w.]+\.(querySelector|closest|matches|matchMedia)|matchMedia|focusWhenThere)/.test(
            at,
          )
        )
          return;
        break;
      }
      case 'Property': {
        const key = node.key as Node & { name?: string; value?: string };
        if (
          /^(queryKey|mutationKey|className|selector|gridTemplate\w*|transform|font\w*)$/.test(
            key.name ?? String(key.value),
          )
        )
          return;
        look(node.value);
        return;
      }
      case 'JSXAttribute': {
        const name = (node.name as Node & { name: string }).name;
        if (typeof name === 'string' && PROGRAM_ATTRIBUTES.test(name)) return;
        const given = node.value as (Node & { value?: string }) | null;
        if (given?.type === 'Literal' && LETTERS.test(String(given.value))) {
          // A word of the program, such as variant="small", has no capital and no space.
          const text = String(given.value);
          if (
            /^(aria-label|label|title|placeholder|hint|alt|description|what|of|unit)$/.test(name) ||
            isSaid(text)
          )
            tell(given, text);
          return;
        }
        look(given);
        return;
      }
      case 'JSXText':
        if (LETTERS.test(String(node.value)) && String(node.value).trim() !== 'Pouchful')
          tell(node, String(node.value));
        return;
      case 'Literal':
        if (typeof node.value === 'string' && !VALUES.has(node.value) && isSaid(node.value))
          tell(node, node.value);
        return;
      case 'TemplateLiteral': {
        const parts = node.quasis as (Node & { value: { cooked: string } })[];
        const whole = parts.map((q) => q.value.cooked).join('…');
        const said =
          parts.some((q) => TWO_WORDS.test(q.value.cooked)) || (web && /^[A-Z][a-z]+ /.test(whole));
        if (said) tell(node, whole);
        look(node.expressions);
        return;
      }
    }
    for (const [field, child] of Object.entries(node)) if (field !== 'type') look(child);
  };
  look(program);
  return found;
}

/** Whether a file asks for the texts while it is loaded, outside of any function. */
export function asksWhileLoaded(path: string): boolean {
  const { program } = parseSync(path, readFileSync(path, 'utf8'));
  const asks = (value: unknown): boolean => {
    if (Array.isArray(value)) return value.some(asks);
    if (typeof value !== 'object' || value === null) return false;
    const node = value as Node;
    if (/^(Function|ArrowFunction)/.test(node.type)) return false;
    if (node.type === 'CallExpression' && (node.callee as Node & { name?: string }).name === 'words')
      return true;
    return Object.values(node).some(asks);
  };
  return asks(program);
}
