/** Who made a report. The version is the package's own (a test holds them together). */
export const tool = { name: 'trueroll', version: '0.1.0' } as const;
