/** The Khronos validator, which has no types of its own: what the tests use of it. */
declare module 'gltf-validator' {
  export interface Report {
    readonly issues: {
      readonly numErrors: number;
      readonly numWarnings: number;
      readonly messages: readonly { readonly code: string; readonly message: string }[];
    };
    readonly info: { readonly drawCallCount: number; readonly totalVertexCount: number };
  }
  export function validateBytes(bytes: Uint8Array): Promise<Report>;
}
