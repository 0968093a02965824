Console.WriteLine("0.1.0");
