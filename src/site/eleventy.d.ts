/** The few parts of Eleventy that we call; the package brings no types of its own. */
declare module '@11ty/eleventy' {
  export interface EleventyConfig {
    readonly ignores: Set<string>;
    setUseGitIgnore(use: boolean): void;
    setTemplateFormats(formats: string): void;
    setIncludesDirectory(folder: string): void;
    setNunjucksEnvironmentOptions(options: Readonly<Record<string, unknown>>): void;
    addNunjucksFilter(name: string, filter: (value: string) => unknown): void;
    addTemplate(path: string, content: string, data: Readonly<Record<string, unknown>>): void;
  }

  export interface RenderedTemplate {
    readonly inputPath: string;
    readonly content: string;
  }

  export interface EleventyOptions {
    readonly configPath: string | null;
    readonly quietMode: boolean;
    readonly loader: 'esm';
    readonly config: (config: EleventyConfig) => void;
  }

  class Eleventy {
    constructor(input: string, output: string, options: EleventyOptions);
    disableLogger(): void;
    toJSON(): Promise<readonly RenderedTemplate[]>;
  }
  export { Eleventy as default };
}
