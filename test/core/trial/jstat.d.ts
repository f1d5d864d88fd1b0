declare module 'jstat' {
  const jstat: {
    readonly normal: {
      cdf(x: number, mean: number, deviation: number): number;
      inv(share: number, mean: number, deviation: number): number;
    };
  };
  export default jstat;
}
