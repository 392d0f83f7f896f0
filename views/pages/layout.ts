/** What every page hands to the template `layout`: its title, its kind, where it is, and what it loads. */

/** shelf = what is there; bench = one thing worked on; floor = one thing, huge. */
export type PageKind = 'shelf' | 'bench' | 'floor'

/** Which entry of the navigation the page belongs to; '' = none of them. */
export type Place = 'shelf' | 'add' | 'jobs' | 'library' | 'settings' | ''

export interface Message {
  kind: 'stop' | 'warn' | 'note' | 'done'
  text: string
}

export interface Layout {
  /** As the browser shows it. */
  title: string
  kind: PageKind
  here: Place
  /** Scripts of views/browser that this page needs beside those of every page. */
  scripts: readonly string[]
  /** true = the page uses htmx; with `sse` also its server-sent events. */
  htmx: boolean
  sse: boolean
  messages: readonly Message[]
}

type Given = Pick<Layout, 'title' | 'kind'> & Partial<Layout>

/** A page object has it as its field `layout`; its template opens with `<% layout('layout') %>`. */
export function buildLayout(given: Given): Layout {
  const { title, ...rest } = given
  return {
    here: '',
    scripts: [],
    htmx: false,
    sse: false,
    messages: [],
    ...rest,
    title: title === '' ? 'Repslate' : `${title} · Repslate`,
  }
}
