/** The links of the power chain from the wall to the machine, as they are drawn: key and name. */
export const chainLinks = {
  mains: 'Site mains',
  socket: 'Socket',
  cord: 'Cord',
  converter: 'Converter',
  inlet: 'Inlet',
  fuse: 'Fuse',
  supply: 'Supply',
  lead: 'Lead',
  plug: 'Plug',
  jack: 'Jack',
  machine: 'Machine',
} as const

export type LinkKey = keyof typeof chainLinks
