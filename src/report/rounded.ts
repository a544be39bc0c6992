/** 12 significant digits: what two machines agree on. */
export const rounded = (value: number): number => Number(value.toPrecision(12));
