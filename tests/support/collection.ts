const volts = [5, 6, 7.5, 9, 12, 13.5, 15, 16, 18, 19, 24]

/** Supplies and machines that all differ, as plates of a large collection do. */
export const supplyAt = (index: number) => ({
  label: `SWITCHING POWER SUPPLY TYPE ${index}\nINPUT: ${index % 3 ? '100-240V' : '120V'}~ 50/60Hz 0.${1 + (index % 9)}A\nOUTPUT: ${volts[index % 11]}V ⎓ ${(0.5 + index / 250).toFixed(3)}A\nclass II`,
  technology: 'switch-mode' as const,
  inlet: 'C8',
  plug: {
    outerMm: 5.5,
    innerMm: index % 2 ? 2.1 : 2.5,
    polarity: index % 4 ? ('centre-positive' as const) : ('centre-negative' as const),
  },
})

export const deviceAt = (index: number) => ({
  label: `RECORDER ${index}\nDC IN ${volts[(index * 7) % 11]}V ⎓ ${(0.3 + index / 300).toFixed(3)}A`,
  jack: { outerMm: 5.5, innerMm: 2.1, polarity: 'centre-positive' as const },
})
