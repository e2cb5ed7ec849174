/** How many rails the form has rows for, on either side. An address may carry no more. */
const railRows = 6

/** One row of what the supply gives: `out1`, `out1kind`, `out1a`, `out1w`. */
const outputRow = (row: number) =>
  ({ voltage: `out${row}`, kind: `out${row}kind`, current: `out${row}a`, power: `out${row}w` }) as const

/** One row of what the machine takes: `need1`, `need1kind`, `need1a`, `need1by`, `need1tol`. */
const needRow = (row: number) =>
  ({
    voltage: `need${row}`,
    kind: `need${row}kind`,
    current: `need${row}a`,
    currentBy: `need${row}by`,
    tolerance: `need${row}tol`,
  }) as const

/** The rows of rails, 1, 2, …, each with the names of its boxes on either side. */
export const rails = Array.from({ length: railRows }, (_, index) => ({
  row: index + 1,
  out: outputRow(index + 1),
  need: needRow(index + 1),
}))
