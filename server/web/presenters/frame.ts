/** What the layout needs of every page. */
export interface FrameView {
  /** Key of the title in messages; empty when `title` says it. */
  readonly titleKey: string;
  readonly title: string;
  /** Which page this is; carries the page's own styles. */
  readonly here: 'bench' | 'sheet' | 'air' | 'rules' | 'help' | 'sums' | 'error';
  readonly isBench: boolean;
  readonly isAir: boolean;
  readonly isRules: boolean;
  readonly scripts: readonly string[];
  readonly helpHref: string;
}

/** The layout's part of a view model: every page keeps working when the signal goes. */
export function frameOf(
  here: FrameView['here'],
  title: { readonly key: string } | { readonly text: string },
  { region = '', scripts = [] }: { region?: string; scripts?: readonly string[] } = {},
): FrameView {
  return {
    titleKey: 'key' in title ? title.key : '',
    title: 'text' in title ? title.text : '',
    here,
    isBench: here === 'bench',
    isAir: here === 'air',
    isRules: here === 'rules',
    scripts: ['offline.js', ...scripts],
    helpHref: region === '' ? '/help-now' : `/help-now?in=${encodeURIComponent(region)}`,
  };
}
