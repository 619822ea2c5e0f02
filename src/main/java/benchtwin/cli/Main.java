package benchtwin.cli;
public final class Main { public static void main(String[] a) { System.out.println("x"); } }
