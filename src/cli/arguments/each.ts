/** Collects an option that may be given several times. */
export const each = (text: string, before: readonly string[]): readonly string[] => [...before, text];
