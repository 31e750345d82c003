/** The engine's version, put in when the app is built: what was worked out by another engine is worked out again. */
declare const __ENGINE__: string;
