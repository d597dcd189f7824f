Console.WriteLine("glazewright");
return 0;
