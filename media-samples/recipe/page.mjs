/**
 * The page the class is drawn on: its size, colours, fonts and the way a room point becomes a place on the page.
 *
 * Offers `width`, `height`, `frameRate`, `pixels` (a metre), `palette`, `project(point)`. The view is parallel, from 11 degrees above.
 */
export const width = 1280
export const height = 720
export const frameRate = 25

/** Pixels to a metre. */
export const pixels = 326

const centreX = 640
const floorY = 598
const above = (11 * Math.PI) / 180

export const palette = {
  ink: '#25272c',
  wall: '#efe6d5',
  wallLow: '#e6dac4',
  wallEnd: '#d9cbb2',
  trim: '#c3b192',
  floor: '#d9c6a2',
  floorLine: '#cbb68e',
  shadow: '#bfa97f',
  accent: '#d5472a',
  accentDark: '#a93519',
  top: '#2f6470',
  legs: '#5b6572',
  shoe: '#f6f1e6',
  skin: '#b87b56',
  skinShade: '#a3684a',
  hair: '#dcd8d0',
  hairShade: '#bdb8af',
  wood: '#dcb070',
  woodDark: '#bd8f50',
  steel: '#444a52',
  paper: '#fbf7ee',
}

/** Room point to { x, y } in pixels and a depth that grows towards the viewer. */
export function project([x, y, z]) {
  return {
    x: centreX + x * pixels,
    y: floorY - (y * Math.cos(above) - z * Math.sin(above)) * pixels,
    depth: z * Math.cos(above) + y * Math.sin(above),
  }
}
