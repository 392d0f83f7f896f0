// The checks page: waivers and cautions are written without leaving it; one key attaches every caution said outside its clip.
import { openSheetPage } from './sheet-page.ts'
import { onKeys } from './single-keys.ts'

const root = document.querySelector<HTMLElement>('#sheet-page')
if (root) {
  const page = openSheetPage(root)
  onKeys({
    t: () => root.querySelector<HTMLButtonElement>('#attach-all')?.click(),
    u: () => page.press('undo'),
    r: () => page.press('redo'),
  })
}
