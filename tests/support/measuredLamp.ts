/** "Ohm's Law and Resistance Lab" (course PHY2049L, 2013): a household bulb, wattage and rated voltage not stated. */
export const measuredLamp = [
  { volts: 2, amps: 0.036, resolution: 0.001 },
  { volts: 5, amps: 0.05, resolution: 0.01 },
  { volts: 10, amps: 0.07, resolution: 0.01 },
  { volts: 20, amps: 0.09, resolution: 0.01 },
  { volts: 30, amps: 0.1, resolution: 0.01 },
  { volts: 40, amps: 0.12, resolution: 0.01 },
  { volts: 50, amps: 0.13, resolution: 0.01 },
  { volts: 60, amps: 0.14, resolution: 0.01 },
  { volts: 70, amps: 0.15, resolution: 0.01 },
  { volts: 80, amps: 0.16, resolution: 0.01 },
  { volts: 90, amps: 0.17, resolution: 0.01 },
  { volts: 100, amps: 0.18, resolution: 0.01 },
  { volts: 110, amps: 0.19, resolution: 0.01 },
]
