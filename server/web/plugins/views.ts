import { runInThisContext } from 'node:vm';
import type { FastifyInstance, FastifyReply } from 'fastify';
import Handlebars from 'handlebars';
import { codedError } from '../../errors.js';
import { makeMessages, type Messages } from '../../words/index.js';
import { assetHref, type ViewFiles } from './viewFiles.js';

declare module 'fastify' {
  interface FastifyReply {
    /** Sends the page of that name, filled from its view model, in the layout. */
    page: (name: string, view: object) => FastifyReply | Promise<FastifyReply>;
  }
}

/** Makes the HTML of a page from its view model. */
export type RenderPage = (name: string, view: object) => string;

export const HTML = 'text/html; charset=utf-8';

const OPTIONS = {
  // A field that a presenter forgot is an error, never a gap on a page that people act on.
  strict: true,
  knownHelpers: { eq: true, t: true, svg: true, asset: true, once: true },
  knownHelpersOnly: true,
  preventIndent: true,
} as const;

/**
 * All templates, compiled. Whatever can be wrong with one is found here: its
 * grammar, a helper or partial that does not exist, words, a drawing or an asset
 * that it names and that is not there.
 */
export function makeRenderPage(files: ViewFiles): RenderPage {
  const handlebars = Handlebars.create();
  const lookUp = makeLookUps(files);
  const drawn = makeDrawn((name, view) => found(partials, name, 'partial')(view));
  handlebars.registerHelper({
    eq: (one: unknown, other: unknown) => one === other,
    t: (key: string, options: Handlebars.HelperOptions) =>
      lookUp.t(key, options.hash as Readonly<Record<string, string | number>>),
    svg: (name: string) => lookUp.svg(name),
    asset: (name: string) => lookUp.asset(name),
    once: (name: string, view: object) => new Handlebars.SafeString(drawn(name, view)),
  });
  const compile = (kind: string, name: string, source: string) => {
    try {
      const tree = settled(Handlebars.parse(source), files, lookUp);
      const code = handlebars.precompile(tree, OPTIONS) as unknown as string;
      const filename = `views/${kind}/${name}.hbs`;
      const spec = runInThisContext(`(${code})`, { filename }) as TemplateSpecification;
      return handlebars.template(spec);
    } catch (error) {
      const why = error instanceof Error ? error.message : String(error);
      throw codedError('VIEWS_WRONG', { problems: `views/${kind}/${name}.hbs: ${why}` });
    }
  };
  const partials = new Map(
    [...files.partials].map(([name, source]) => [name, compile('partials', name, source)]),
  );
  handlebars.registerPartial(Object.fromEntries(partials));
  const layout = compile('layouts', 'main', files.layout);
  const pages = new Map(
    [...files.pages].map(([name, source]) => [name, compile('pages', name, source)]),
  );
  return (name, view) => {
    const page = pages.get(name);
    if (!page) throw codedError('VIEWS_WRONG', { problems: `no page ${name}` });
    return layout({ ...view, body: page(view) });
  };
}

/** Draws a view with a partial; the same view is drawn once and remembered for as long as it lives. */
function makeDrawn(draw: RenderPage): RenderPage {
  const byPartial = new Map<string, WeakMap<object, string>>();
  return (name, view) => {
    const known = byPartial.get(name) ?? new WeakMap<object, string>();
    byPartial.set(name, known);
    const text = known.get(view) ?? draw(name, view);
    known.set(view, text);
    return text;
  };
}

/** What templates look up by name; each throws when there is no such thing. */
interface LookUps {
  readonly t: Messages;
  readonly svg: (name: string) => string;
  readonly asset: (name: string) => string;
}

function makeLookUps(files: ViewFiles): LookUps {
  const drawings = new Map(
    [...files.assets.values()]
      .filter((asset) => asset.name.endsWith('.svg'))
      .map((asset) => [asset.name.slice(0, -4), asset.body.toString('utf8').trim()]),
  );
  return {
    t: makeMessages(files.messages),
    svg: (name) => found(drawings, name, 'drawing'),
    asset: (name) => assetHref(found(files.assets, name, 'asset')),
  };
}

function found<T>(things: ReadonlyMap<string, T>, name: string, what: string): T {
  const thing = things.get(name);
  if (thing === undefined) throw new Error(`no ${what} called "${name}"`);
  return thing;
}

type Call = hbs.AST.MustacheStatement | hbs.AST.SubExpression;

/**
 * The tree of a template with all put in that is the same on every page: words,
 * drawings and assets that it names outright. They, and its partials, must be there.
 */
function settled(tree: hbs.AST.Program, files: ViewFiles, lookUp: LookUps): hbs.AST.Program {
  const constant = ({ path, params: [first] }: Call): string | undefined => {
    const helper = 'original' in path ? path.original : '';
    if (first?.type !== 'StringLiteral' || !isLookUp(helper)) return undefined;
    return lookUp[helper]((first as hbs.AST.StringLiteral).value);
  };
  const checkPartial = (name: string): void => {
    if (!files.partials.has(name)) throw new Error(`no partial called "${name}"`);
  };
  const checkOnce = ({ path, params: [first] }: Call): void => {
    if (!('original' in path) || path.original !== 'once') return;
    checkPartial(first?.type === 'StringLiteral' ? (first as hbs.AST.StringLiteral).value : '');
  };
  // What a handler returns takes the place of its node; nothing leaves it as it is.
  const visitor = Object.assign(new Handlebars.Visitor(), { mutating: true });
  visitor.MustacheStatement = (node): hbs.AST.Node | undefined => {
    const text = constant(node);
    checkOnce(node);
    Handlebars.Visitor.prototype.MustacheStatement.call(visitor, node);
    const isWhole = text !== undefined && (node.hash as hbs.AST.Hash | undefined) === undefined;
    return isWhole ? content(node, text) : undefined;
  };
  visitor.SubExpression = (node) => {
    constant(node);
    Handlebars.Visitor.prototype.SubExpression.call(visitor, node);
  };
  visitor.PartialStatement = (node) => {
    checkPartial('original' in node.name ? node.name.original : '');
    Handlebars.Visitor.prototype.PartialStatement.call(visitor, node);
  };
  visitor.accept(tree);
  return tree;
}

const isLookUp = (helper: string): helper is keyof LookUps =>
  helper === 't' || helper === 'svg' || helper === 'asset';

function content({ escaped, loc }: hbs.AST.MustacheStatement, text: string) {
  const value = escaped ? Handlebars.escapeExpression(text) : text;
  const original = { open: false, close: false };
  const node: hbs.AST.ContentStatement = { type: 'ContentStatement', value, original, loc };
  return node;
}

/** Gives each reply `page`. */
export function useViews(app: FastifyInstance, renderPage: RenderPage): void {
  app.decorateReply('page', function (this: FastifyReply, name: string, view: object) {
    return this.finished({ type: HTML, body: Buffer.from(renderPage(name, view)) });
  });
}
