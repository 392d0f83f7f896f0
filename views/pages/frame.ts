/** What every template finds beside the fields of its own page; the server fills it in. */

/** Addresses of what a page loads, by name. An unknown name is a fault of the page. */
export interface AssetNames {
  /** A script of views/browser, such as `js('class')`, a module; or `htmx`, `htmx-sse`, which are plain scripts. */
  js: (name: string) => string
  /** The styles: `css('main')`. */
  css: (name: string) => string
  /** A file of views/static, with its ending: `file('icon.svg')`. */
  file: (name: string) => string
}

export interface Frame {
  /** The token of this session; every write carries it, as header X-Repslate-Token or as field `token` of a form. */
  token: string
  assets: AssetNames
  /** The newest event of the store when the page was asked for; its events go on from there. */
  seen: number
  /** The content of `<meta name="htmx-config">`. */
  htmxConfig: string
}
