/** Exit codes of every command. */
export const EXIT = { fine: 0, findings: 1, usage: 2 } as const;
