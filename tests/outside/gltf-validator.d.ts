/** The part of Khronos' validator that the tests call; the package brings no types. */
declare module 'gltf-validator' {
  interface Message {
    readonly code: string;
    readonly message: string;
    /** 0 error, 1 warning, 2 information, 3 hint */
    readonly severity: 0 | 1 | 2 | 3;
    readonly pointer?: string;
  }

  interface Report {
    readonly issues: {
      readonly numErrors: number;
      readonly numWarnings: number;
      readonly numInfos: number;
      readonly numHints: number;
      readonly messages: readonly Message[];
    };
    readonly info: Readonly<Record<string, unknown>>;
  }

  export function validateBytes(
    bytes: Uint8Array,
    options?: { readonly maxIssues?: number; readonly ignoredIssues?: readonly string[] },
  ): Promise<Report>;
}
